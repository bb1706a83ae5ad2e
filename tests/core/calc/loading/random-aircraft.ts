import fc from 'fast-check';
import { unusableOf } from '../../../../worker/core/calc/loading/fuel.ts';
import type { MassMoment } from '../../../../worker/core/calc/mass/mass-moment.ts';
import type { Aircraft, FuelStation, LoadStation, Station } from '../../../../worker/core/record/visit.ts';
import { readVisit } from '../read-visit.ts';

const TEMPLATE = readVisit('computed-only').aircraft;

/** A small aircraft and its empty condition. */
export interface Loadable {
  aircraft: Aircraft;
  empty: MassMoment;
}

const ofTenths = (min: number, max: number) =>
  fc.integer({ min: min * 10, max: max * 10 }).map((tenths) => tenths / 10);

const seats = fc.tuple(
  fc.record({ armMm: ofTenths(200, 900), minimumMassKg: ofTenths(40, 70), maximumMassKg: ofTenths(80, 120) }),
  fc.array(fc.record({ armMm: ofTenths(-200, 2500), maximumMassKg: ofTenths(0, 120) }), { minLength: 1, maxLength: 3 }),
);

const fixedTank = fc.record({ armMm: ofTenths(-300, 1200), capacityL: ofTenths(10, 90), unusableL: ofTenths(0, 5) });

const tabledTank = fc
  .tuple(
    ofTenths(-300, 1200),
    fc.array(fc.record({ span: ofTenths(5, 40), drift: ofTenths(-30, 30) }), { minLength: 1, maxLength: 3 }),
  )
  .map(([startMm, steps]) => {
    const armByVolume = [{ volumeL: 0, armMm: startMm }];
    for (const { span, drift } of steps) {
      const last = armByVolume.at(-1) ?? { volumeL: 0, armMm: startMm };
      armByVolume.push({ volumeL: last.volumeL + span, armMm: last.armMm + drift });
    }
    return { armByVolume, capacityL: armByVolume.at(-1)?.volumeL ?? 0, unusableL: 1 };
  });

/** Two groups that are nested, the inner first; or the passengers alone and everything but the pilot. */
const groups = fc.option(
  fc.record({ innerKg: ofTenths(20, 200), outerKg: ofTenths(40, 300), joinsPilot: fc.boolean() }),
);

type Tank = {
  armMm?: number;
  armByVolume?: { volumeL: number; armMm: number }[];
  capacityL: number;
  unusableL: number;
};

/** Aircraft with one pilot, up to three more places, one tank of each kind asked for, nested limits and caps on mass. */
export function loadables(tanks: { fixed: number; tabled: number }): fc.Arbitrary<Loadable> {
  return fc
    .record({
      places: seats,
      fixed: fc.array(fixedTank, { minLength: tanks.fixed, maxLength: tanks.fixed }),
      tabled: fc.array(tabledTank, { minLength: tanks.tabled, maxLength: tanks.tabled }),
      groups,
      emptyKg: ofTenths(150, 350),
      emptyMm: ofTenths(100, 600),
      payloadKg: ofTenths(60, 400),
      zeroFuelPayloadKg: fc.option(ofTenths(60, 300)),
      landingPayloadKg: fc.option(ofTenths(60, 300)),
    })
    .map(({ places: [pilot, others], fixed, tabled, groups: limits, emptyKg, emptyMm, ...payloads }) => {
      const { payloadKg, zeroFuelPayloadKg, landingPayloadKg } = payloads;
      const load: LoadStation[] = [
        { id: 'pilot', name: 'Pilot', kind: 'pilot', ...pilot },
        ...others.map((other, index) => ({
          id: `place-${index}`,
          name: `Place ${index}`,
          kind: 'baggage' as const,
          ...other,
        })),
      ];
      const fuel = [...fixed, ...tabled].map(
        (tank: Tank, index): FuelStation => ({
          id: `tank-${index}`,
          name: `Tank ${index}`,
          kind: 'fuel',
          densityKgPerL: 0.72,
          ...tank,
        }),
      );
      const outer = load.slice(limits?.joinsPilot ? 0 : 1).map(({ id }) => id);
      const limit = (id: string, stations: string[], maximumMassKg: number) => ({
        id,
        text: id,
        stations,
        maximumMassKg,
      });
      const aircraft: Aircraft = {
        ...TEMPLATE,
        stations: [...load, ...fuel],
        maximumMassKg: emptyKg + payloadKg,
        ...(limits && {
          loadingLimits: [limit('inner', outer.slice(-1), limits.innerKg), limit('outer', outer, limits.outerKg)],
        }),
        ...(zeroFuelPayloadKg !== null && { maximumZeroFuelMassKg: emptyKg + zeroFuelPayloadKg }),
        ...(landingPayloadKg !== null && { maximumLandingMassKg: emptyKg + landingPayloadKg }),
      };
      return { aircraft, empty: { massKg: emptyKg, momentKgMm: emptyKg * emptyMm } };
    });
}

/** A share of the way from the least to the greatest mass of a station. */
export function massAt(station: Station, share: number): number {
  if ('capacityL' in station) return share * (station.capacityL - unusableOf(station)) * station.densityKgPerL;
  const least = station.kind === 'pilot' ? (station.minimumMassKg ?? 0) : 0;
  return least + share * (station.maximumMassKg - least);
}
