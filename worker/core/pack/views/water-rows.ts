import { dumpTime } from '../../calc/loading/dump.ts';
import { usableFuel, waterTanksOf } from '../../calc/loading/fuel.ts';
import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import type { View } from '../render.ts';

const L_PER_H_IN_L_PER_S = 1 / 3600;

/** Returns the tanks for water: content, time to drain, and ballast that follows from other tanks. */
export function waterRows({ visit, fmt }: PackContext): View {
  const tanks = waterTanksOf(visit.aircraft);
  const nameOf = (id: string): string => tanks.find((tank) => tank.id === id)?.name ?? id;
  return {
    hasWater: tanks.length > 0,
    water: tanks.map((tank) => ({
      name: tank.name,
      volume: fmt.measure('volume', tank.capacityL, { bound: 'most' }),
      mass: fmt.measure('mass', usableFuel(tank, tank.capacityL).massKg, { bound: 'most' }),
      drains: tank.isDumpable ? drainText(fmt, tank.capacityL, tank.dumpRateLPerH) : fmt.text(m.waterRows_notDumpable),
    })),
    matched: tanks.flatMap(({ name, matched }) =>
      matched
        ? [
            fmt.text(m.waterRows_matched, {
              name,
              to: matched.to.map(nameOf).join(', '),
              table: matched.table
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
    ),
  };
}

/** Returns the time to drain in whole minutes, rounded up. */
function drainText(fmt: PackContext['fmt'], volumeL: number, rateLPerH: number | undefined): string {
  const time = rateLPerH === undefined ? undefined : dumpTime({ volumeL, flowLPerS: rateLPerH * L_PER_H_IN_L_PER_S });
  return time ? fmt.text(m.waterRows_minutes, { minutes: Math.ceil(time.seconds / 60) }) : DASH;
}
