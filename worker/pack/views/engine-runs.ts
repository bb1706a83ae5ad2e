import { lastRun, type RunComparison, runsByTime } from '../../calc/engine-runs.ts';
import { rangeText } from '../../gate/range-text.ts';
import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
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
      when: when === 'before' ? say.text(m.engineRuns_beforeWork) : say.text(m.engineRuns_afterWork),
      at: say.moment(at),
      by: nameOf(visit, by),
      restraint: say.text(m.engineRuns_watched, {
        restraint: restraint ?? say.text(m.notStated2),
        visit: nameOf(visit, heldBy),
      }),
      conditions: [
        run.airTemperatureC === undefined ? DASH : `${say.plain(run.airTemperatureC, 0)} °C`,
        run.pressureHpa === undefined ? DASH : `${say.plain(run.pressureHpa, 0)} hPa`,
      ].join(', '),
      leaks: run.leaksLookedFor ? say.text(m.engineRuns_lookedNoneStated) : say.text(m.engineRuns_notLooked),
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
      limits: say.value(rangeText({ least, most })),
      verdict: after === undefined && last ? say.text(m.engineRuns_notRead) : verdictOf(say, row),
    })),
    signatures: [signatureOf(visit, last?.by, say.text(m.engineRuns_run), last ? say.moment(last.at) : DASH)],
    ...sources(say.text(m.engineRuns_limitsRecordManualEngine), say.text(m.engineRuns_enginePropellerCanKill)),
  };
}

function verdictOf(say: Printer, { isWithin, isChanged }: Pick<RunComparison, 'isWithin' | 'isChanged'>): string {
  return `${isWithin ? '✓' : say.text(m.outside)}${isChanged ? say.text(m.engineRuns_moved) : ''}`;
}

/** Which engine it is that was run, as its plate has it. */
function engineText({ visit, say }: PackContext): string {
  const { engine } = visit.aircraft;
  if (!engine) return say.text(m.engineRuns_recordNamesNoEngine);
  const { maker, model, serial, maximumPowerKw } = engine;
  return maximumPowerKw === undefined
    ? say.text(m.engineRuns_serialNumber, { maker, model, serial })
    : say.text(m.engineRuns_serialNumberKwMost, { maker, model, serial, maximumPowerKw: say.asIs(maximumPowerKw, 1) });
}
