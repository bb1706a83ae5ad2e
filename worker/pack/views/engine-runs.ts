import { lastRun, type RunComparison, runsByTime } from '../../calc/engine-runs.ts';
import { rangeText } from '../../gate/range-text.ts';
import { DASH } from '../../text/dash.ts';
import type { Printer } from '../../text/print.ts';
import { runsChart } from '../chart/runs-chart.ts';
import type { PackContext } from '../context.ts';
import { nameOf, signatureOf } from '../people.ts';
import type { View } from '../render.ts';
import { common, sources } from './common.ts';

/** A number as an instrument shows it: as many decimals as it has, no more than three. */
function shown(say: Printer, value: number | undefined): string {
  return value === undefined ? DASH : say.asIs(value, 3);
}

export function engineRunsView(context: PackContext): View {
  const { visit, results, say } = context;
  const runs = visit.engineRuns ?? [];
  const last = lastRun(runs, 'after')?.run;
  return {
    ...common(context),
    engine: engineText(context),
    runs: runsByTime(runs).map(({ run: { when, at, by, restraint, heldBy, ...run } }) => ({
      when: when === 'before' ? say.words`Before the work` : say.words`After the work`,
      at: say.moment(at),
      by: nameOf(visit, by),
      restraint: say.words`${restraint ?? say.words`NOT STATED`}; watched by ${nameOf(visit, heldBy)}`,
      conditions: [
        run.airTemperatureC === undefined ? DASH : `${say.plain(run.airTemperatureC, 0)} °C`,
        run.pressureHpa === undefined ? DASH : `${say.plain(run.pressureHpa, 0)} hPa`,
      ].join(', '),
      leaks: run.leaksLookedFor ? say.words`looked for, none stated` : say.words`not looked for`,
    })),
    hasValues: results.engineRuns.length > 0,
    chart: runsChart(results.engineRuns, say),
    values: results.engineRuns.map(({ name, unit, before, after, change, least, most, ...row }) => ({
      name,
      unit,
      before: shown(say, before),
      after: shown(say, after),
      change:
        change === undefined ? DASH : `${change > 0 ? '+' : change < 0 ? '−' : ''}${shown(say, Math.abs(change))}`,
      limits: rangeText({ least, most }, say),
      verdict: after === undefined && last ? say.words`NOT READ` : verdictOf(say, row),
    })),
    signatures: [signatureOf(visit, last?.by, say.words`Run by`, last ? say.moment(last.at) : DASH)],
    ...sources(
      say.words`Limits as in the record, from the manual of the engine. “moved”: the change is more than one step of the instrument; air temperature and pressure move readings too. “NOT READ”: read before the work and not after it.`,
      say.words`Engine and propeller can kill: restrain the aircraft and clear the propeller before every start.`,
    ),
  };
}

function verdictOf(say: Printer, { isWithin, isChanged }: Pick<RunComparison, 'isWithin' | 'isChanged'>): string {
  return `${isWithin ? '✓' : say.words`OUTSIDE`}${isChanged ? say.words`, moved` : ''}`;
}

/** Which engine it is that was run, as its plate has it. */
function engineText({ visit, say }: PackContext): string {
  const { engine } = visit.aircraft;
  if (!engine) return say.words`the record names no engine`;
  const { maker, model, serial, maximumPowerKw } = engine;
  return maximumPowerKw === undefined
    ? say.words`${maker} ${model}, serial number ${serial}`
    : say.words`${maker} ${model}, serial number ${serial}, ${say.asIs(maximumPowerKw, 1)} kW at most`;
}
