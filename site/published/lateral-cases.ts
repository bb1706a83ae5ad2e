import { lateralLimitsOf } from '../../worker/core/calc/lateral/lateral-envelope.ts';
import { lateralJudge } from '../../worker/core/calc/lateral/lateral-verdict.ts';
import { tankContent } from '../../worker/core/calc/loading/fuel.ts';
import { lateralMomentKgMm } from '../../worker/core/calc/mass/lateral-moment.ts';
import { atArm } from '../../worker/core/calc/mass/mass-moment.ts';
import { isAtLeast } from '../../worker/core/calc/numbers/limit-met.ts';

interface Item {
  mass: number;
  /** Right positive. */
  lateral: number;
}

interface Place {
  arm: number;
  lateral: number;
}

/** Topics of the lateral centre of gravity, in any one system of units. */
export const LATERAL_TOPICS = {
  /** Lateral moment of the stated items, and that of each by its number. */
  'lateral-moment': ({ items }: { items: Item[] }) => {
    const all = items.map(({ mass, lateral }) => ({ massKg: mass, lateralMm: lateral }));
    const rows = all.map((item, index) => [`moment${index + 1}`, lateralMomentKgMm([item])]);
    return { moment: lateralMomentKgMm(all), ...Object.fromEntries(rows) };
  },

  /** Left and right limit at an arm, and whether a place is within: 1 for yes, 0 for no. */
  'lateral-limits': ({ corners, place }: { corners: Place[]; place: Place }) => {
    const lateralEnvelope = {
      by: 'arm' as const,
      corners: corners.map(({ arm, lateral }) => ({ armMm: arm, lateralArmMm: lateral })),
    };
    const limits = lateralLimitsOf(lateralEnvelope);
    const edges = limits?.by === 'arm' ? limits.edges : [];
    const limitsOn = (side: 1 | -1): number[] =>
      edges
        .filter(({ across }) => Math.sign(across) === side)
        .map(({ along, across, offsetMm }) => (offsetMm - along * place.arm) / across);
    // An aircraft of a mass of one, without any load.
    const judge = lateralJudge(
      { stations: [], maximumMassKg: 1, lateralEnvelope },
      { massKg: 1, lateralKgMm: place.lateral },
    );
    const verdict = judge?.([{ massKg: 1, momentKgMm: place.arm, load: {} }]);
    return {
      left: Math.max(...limitsOn(-1)),
      right: Math.min(...limitsOn(1)),
      isWithin: Number(isAtLeast(verdict?.marginMm ?? Number.NaN, 0)),
    };
  },

  /** Fuel of a one-sided tank whose arms are given by bands of its content. */
  'fuel-band': ({ volume, density, from, to, arm, lateral }: Record<FuelBand, number>) => {
    const armByVolume = [from, to].map((volumeL) => ({ volumeL, armMm: arm }));
    const tank = { id: 'T', name: 'T', kind: 'fuel' as const, armByVolume, capacityL: to, unusableL: 0 };
    const { massKg, momentKgMm } = tankContent({ ...tank, densityKgPerL: density }, volume);
    return { mass: massKg, moment: momentKgMm, lateralMoment: lateralMomentKgMm([{ massKg, lateralMm: lateral }]) };
  },

  /** A mass that is missing, in both directions. */
  'missing-item': ({ mass, arm, lateral }: Item & Place) => ({
    moment: atArm(-mass, arm).momentKgMm,
    lateralMoment: lateralMomentKgMm([{ massKg: -mass, lateralMm: lateral }]),
  }),
};

type FuelBand = 'volume' | 'density' | 'from' | 'to' | 'arm' | 'lateral';
