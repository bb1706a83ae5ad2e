import { isAtLeast } from '../../calc/numbers/limit-met.ts';
import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import { loadingName } from '../loading-name.ts';
import { nameOf } from '../people.ts';
import type { View } from '../render.ts';
import { stationLateralText } from './station-lateral.ts';
import { sectionOf, tableOf } from './table-section.ts';

/** Returns the lateral balance of the loaded aircraft: named loadings, margins to the limits, arms of the stations. */
export function lateralSection(context: PackContext): View[] {
  const { results, fmt } = context;
  const { lateral } = results;
  if (!lateral) return [];
  const armUnit = fmt.unit('arm');
  const lateralArm = fmt.text(m.loadingSheet_lateralArm);
  const corners = limitRows(context).map(({ at, lateral: arm }) => [at, arm]);
  return [
    sectionOf(
      fmt.text(m.loadingSheet_lateralBalance),
      [
        tableOf(
          fmt.text(m.loadingSheet_lateralLoadings, { armUnit }),
          [
            ['num', fmt.text(m.no2)],
            ['text', fmt.text(m.loadingSheet_loading)],
            ['num', fmt.text(m.takeOff)],
            ['num', fmt.text(m.loadingSheet_noFuel)],
          ],
          loadingRows(context),
        ),
        tableOf(
          fmt.text(m.loadingSheet_lateralArms, { armUnit }),
          [
            ['text', fmt.text(m.station)],
            ['num', lateralArm],
          ],
          context.visit.aircraft.stations.map((station) => [station.name, stationLateralText(fmt, station)]),
        ),
        ...(corners.length > 0
          ? [
              tableOf(
                fmt.text(m.loadingSheet_lateralCorners),
                [
                  ['num', fmt.text(m.loadingSheet_at2)],
                  ['num', lateralArm],
                ],
                corners,
              ),
            ]
          : []),
      ],
      lateralLines(context),
    ),
  ];
}

function loadingRows({ results, fmt }: PackContext): string[][] {
  const { lateral, loading } = results;
  if (!lateral || !loading) return [];
  const arm = (mm: number): string => fmt.number('arm', mm, { signed: true, extra: 1 });
  const kinds = new Map(loading.loadings.map(({ kind }) => [kind as string, kind]));
  return [
    [DASH, fmt.text(m.loadingSheet_emptyAircraft), arm(lateral.empty.armMm), DASH],
    ...lateral.loadings.map(({ kind, takeOffMm, noFuelMm }, index) => {
      const named = kinds.get(kind);
      return [String(index + 1), named ? fmt.value(loadingName(named)) : kind, arm(takeOffMm), arm(noFuelMm)];
    }),
  ];
}

function lateralLines({ results, fmt }: PackContext): string[] {
  const { extremes, margins = [] } = results.lateral ?? {};
  const arm = (mm: number): string => fmt.measure('arm', mm, { signed: true, extra: 1 });
  const between = extremes
    ? [fmt.text(m.lateralRows_extremes, { left: arm(extremes.left.armMm), right: arm(extremes.right.armMm) })]
    : [];
  return [
    ...between,
    ...margins.map(({ side, margin }) => {
      const isInside = isAtLeast(margin, 0);
      return fmt.text(isInside ? m.lateralRows_inside : m.lateralRows_outside, {
        side: fmt.term(side),
        margin: fmt.measure('arm', Math.abs(margin), { extra: 1, bound: isInside ? 'most' : 'least' }),
      });
    }),
  ];
}

/** Returns the corners of the lateral limits, as printed on sheet and card. */
export function limitRows({ visit, fmt }: PackContext): { at: string; lateral: string }[] {
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
export function noLimitsLine({ visit, fmt }: PackContext): string {
  const { noLateralLimits } = visit.aircraft;
  if (!noLateralLimits) return '';
  const { by, paragraph } = noLateralLimits;
  return fmt.text(m.lateralRows_noLimits, { by: nameOf(visit, by), paragraph });
}
