import { dumpTime } from '../../calc/loading/dump.ts';
import { usableFuel, waterTanksOf } from '../../calc/loading/fuel.ts';
import { DASH } from '../../text/dash.ts';
import { MAX } from '../../text/figure.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import type { View } from '../render.ts';
import { type Column, sectionOf, tableOf } from './table-section.ts';

const L_PER_H_IN_L_PER_S = 1 / 3600;

/** Returns the tanks for water: content, time to drain, and ballast that follows from other tanks. */
export function waterSection({ visit, fmt }: PackContext): View[] {
  const tanks = waterTanksOf(visit.aircraft);
  if (tanks.length === 0) return [];
  const nameOf = (id: string): string => tanks.find((tank) => tank.id === id)?.name ?? id;
  const rows = tanks.map((tank) => [
    tank.name,
    fmt.measure('volume', tank.capacityL, MAX),
    fmt.measure('mass', usableFuel(tank, tank.capacityL).massKg, MAX),
    tank.isDumpable ? drainText(fmt, tank.capacityL, tank.dumpRateLPerH) : fmt.text(m.waterRows_notDumpable),
  ]);
  const columns: Column[] = [
    ['name', fmt.text(m.loadingSheet_tank)],
    ['num', fmt.text(m.loadingSheet_content)],
    ['num', fmt.text(m.loadingSheet_contentMass)],
    ['text', fmt.text(m.loadingSheet_drainsIn)],
  ];
  const matched = tanks.flatMap(({ name, matched: ballast }) =>
    ballast
      ? [
          fmt.text(m.waterRows_matched, {
            name,
            to: ballast.to.map(nameOf).join(', '),
            table: ballast.table
              .map(({ massKg, ballastKg }) =>
                fmt.text(m.waterRows_line, {
                  water: fmt.measure('mass', massKg),
                  ballast: fmt.measure('mass', ballastKg, { extra: 1 }),
                }),
              )
              .join('; '),
          }),
        ]
      : [],
  );
  return [
    sectionOf(fmt.text(m.loadingSheet_water), [tableOf(fmt.text(m.loadingSheet_waterTanks), columns, rows)], matched),
  ];
}

/** Returns the time to drain in whole minutes, rounded up. */
function drainText(fmt: PackContext['fmt'], volumeL: number, rateLPerH: number | undefined): string {
  const time = rateLPerH === undefined ? undefined : dumpTime({ volumeL, flowLPerS: rateLPerH * L_PER_H_IN_L_PER_S });
  return time ? fmt.text(m.waterRows_minutes, { minutes: Math.ceil(time.seconds / 60) }) : DASH;
}
