import { lastRun, type RunComparison, runsByTime } from '../../calc/engine-runs.ts';
import { rangeText } from '../../gate/range-text.ts';
import { printMoment } from '../../units/calendar.ts';
import { printNumber } from '../../units/rounding.ts';
import { runsChart } from '../chart/runs-chart.ts';
import type { PackContext } from '../context.ts';
import { DASH, nameOf, signatureOf } from '../people.ts';
import type { View } from '../render.ts';
import { common, sources } from './common.ts';

/** A number as an instrument shows it: as many decimals as it has, no more than three. */
const shown = (value: number | undefined): string => (value === undefined ? DASH : String(Number(value.toFixed(3))));

export function engineRunsView(context: PackContext): View {
  const { visit, results } = context;
  const runs = visit.engineRuns ?? [];
  const last = lastRun(runs, 'after')?.run;
  return {
    ...common(context),
    runs: runsByTime(runs).map(({ run: { when, at, by, restraint, heldBy, ...run } }) => ({
      when: when === 'before' ? 'Before the work' : 'After the work',
      at: printMoment(at),
      by: nameOf(visit, by),
      restraint: `${restraint ?? 'NOT STATED'}; watched by ${nameOf(visit, heldBy)}`,
      conditions: [
        run.airTemperatureC === undefined ? DASH : `${printNumber(run.airTemperatureC, 0)} °C`,
        run.pressureHpa === undefined ? DASH : `${printNumber(run.pressureHpa, 0)} hPa`,
      ].join(', '),
      leaks: run.leaksLookedFor ? 'looked for, none stated' : 'not looked for',
    })),
    hasValues: results.engineRuns.length > 0,
    chart: runsChart(results.engineRuns),
    values: results.engineRuns.map(({ name, unit, before, after, change, least, most, ...row }) => ({
      name,
      unit,
      before: shown(before),
      after: shown(after),
      change: change === undefined ? DASH : `${change > 0 ? '+' : change < 0 ? '−' : ''}${shown(Math.abs(change))}`,
      limits: rangeText({ least, most }),
      verdict: after === undefined && last ? 'NOT READ' : verdictOf(row),
    })),
    signatures: [signatureOf(visit, last?.by, 'Run by', last ? printMoment(last.at) : DASH)],
    ...sources(
      'Limits as in the record, from the manual of the engine. “moved”: the change is more than one step of the instrument; air temperature and pressure move readings too. “NOT READ”: read before the work and not after it.',
      'Engine and propeller can kill: restrain the aircraft and clear the propeller before every start.',
    ),
  };
}

function verdictOf({ isWithin, isChanged }: Pick<RunComparison, 'isWithin' | 'isChanged'>): string {
  return `${isWithin ? '✓' : 'OUTSIDE'}${isChanged ? ', moved' : ''}`;
}
