import { isAtLeast } from '../../calc/numbers/limit-met.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import { loadingName } from '../loading-name.ts';
import type { View } from '../render.ts';
import { stationLateralText } from './station-lateral.ts';

/** Returns the lateral balance of the loaded aircraft: arms of the stations, named loadings, and margins to the limits. */
export function lateralRows(context: PackContext): View {
  const { results, fmt, visit } = context;
  const { lateral, loading } = results;
  if (!lateral || !loading) return { hasLateral: false, noLateralLimits: noLimitsLine(context) };
  const arm = (mm: number): string => fmt.number('arm', mm, { signed: true, extra: 1 });
  const kinds = new Map(loading.loadings.map(({ kind }) => [kind as string, kind]));
  return {
    hasLateral: true,
    noLateralLimits: '',
    lateralStations: visit.aircraft.stations.map((station) => ({
      name: station.name,
      arm: stationLateralText(fmt, station),
    })),
    lateralEmpty: arm(lateral.empty.armMm),
    lateralLoadings: lateral.loadings.map(({ kind, takeOffMm, noFuelMm }, index) => {
      const named = kinds.get(kind);
      return {
        number: String(index + 1),
        name: named ? fmt.value(loadingName(named)) : kind,
        takeOff: arm(takeOffMm),
        noFuel: arm(noFuelMm),
      };
    }),
    lateralExtremes: lateral.extremes
      ? fmt.text(m.lateralRows_extremes, {
          left: fmt.measure('arm', lateral.extremes.left.armMm, { signed: true, extra: 1 }),
          right: fmt.measure('arm', lateral.extremes.right.armMm, { signed: true, extra: 1 }),
        })
      : '',
    lateralLimits: limitRows(context),
    hasLateralLimits: visit.aircraft.lateralEnvelope !== undefined,
    lateralMargins: lateral.margins.map(({ side, margin }) =>
      isAtLeast(margin, 0)
        ? fmt.text(m.lateralRows_inside, {
            side: fmt.term(side),
            margin: fmt.measure('arm', margin, { extra: 1, bound: 'most' }),
          })
        : fmt.text(m.lateralRows_outside, {
            side: fmt.term(side),
            margin: fmt.measure('arm', -margin, { extra: 1, bound: 'least' }),
          }),
    ),
  };
}

/** Returns the corners of the lateral limits, as printed on sheet and card. */
export function limitRows({ visit, fmt }: PackContext): View[] {
  const limits = visit.aircraft.lateralEnvelope;
  if (!limits) return [];
  return limits.by === 'mass'
    ? limits.corners.map(({ massKg, lateralArmMm }) => ({
        at: fmt.measure('mass', massKg),
        lateral: fmt.measure('arm', lateralArmMm, { signed: true }),
      }))
    : limits.corners.map(({ armMm, lateralArmMm }) => ({
        at: fmt.measure('arm', armMm),
        lateral: fmt.measure('arm', lateralArmMm, { signed: true }),
      }));
}

/** States who says by which paragraph that the manual has no lateral limits. */
function noLimitsLine({ visit, fmt }: PackContext): string {
  const { noLateralLimits } = visit.aircraft;
  if (!noLateralLimits) return '';
  const by = visit.people.find(({ id }) => id === noLateralLimits.by)?.name ?? noLateralLimits.by;
  return fmt.text(m.lateralRows_noLimits, { by, paragraph: noLateralLimits.paragraph });
}
