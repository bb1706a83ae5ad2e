import { lastRun, type RunComparison, runsByTime } from '../../calc/engine/engine-runs.ts';
import { rangeText } from '../../gate/range-text.ts';
import { classDataOf } from '../../record/classes/index.ts';
import { DASH } from '../../text/dash.ts';
import type { Formatter } from '../../text/formatter.ts';
import * as m from '../../text/generated/messages.ts';
import type { Message } from '../../text/message.ts';
import { runsChart } from '../chart/runs-chart.ts';
import type { PackContext } from '../context.ts';
import { nameOf, signatureOf } from '../people.ts';
import type { View } from '../render.ts';
import { accepted } from './accepted.ts';
import { common, sources } from './common.ts';

/** Returns a number as an instrument shows it: its own decimals, up to three. */
function shown(fmt: Formatter, value: number | undefined): string {
  return value === undefined ? DASH : fmt.asIs(value, 3);
}

export function engineRunsView(context: PackContext): View {
  const { visit, results, fmt } = context;
  const runs = visit.engineRuns ?? [];
  const last = lastRun(runs, 'after')?.run;
  return {
    ...common(context),
    ...accepted(context, '/engineRuns'),
    engine: engineText(context),
    runs: runsByTime(runs).map(({ run: { when, at, by, restraint, heldBy, ...run } }) => ({
      when: when === 'before' ? fmt.text(m.engineRuns_beforeWork) : fmt.text(m.engineRuns_afterWork),
      at: fmt.timestamp(at),
      by: nameOf(visit, by),
      restraint: fmt.text(m.engineRuns_watched, {
        restraint: restraint ?? fmt.text(m.notStated2),
        visit: nameOf(visit, heldBy),
      }),
      conditions: [
        run.airTemperatureC === undefined ? DASH : `${fmt.plain(run.airTemperatureC, 0)} °C`,
        run.pressureHpa === undefined ? DASH : `${fmt.plain(run.pressureHpa, 0)} hPa`,
      ].join(', '),
      leaks: run.leaksLookedFor ? fmt.text(m.engineRuns_lookedNoneStated) : fmt.text(m.engineRuns_notLooked),
    })),
    hasValues: results.engineRuns.length > 0,
    chart: runsChart(results.engineRuns, fmt),
    values: results.engineRuns.map(({ name, unit, before, after, change, least, most, ...row }) => ({
      name,
      unit,
      before: shown(fmt, before),
      after: shown(fmt, after),
      change:
        change === undefined ? DASH : `${change > 0 ? '+' : change < 0 ? '−' : ''}${shown(fmt, Math.abs(change))}`,
      limits: fmt.value(rangeText({ least, most })),
      verdict: after === undefined && last ? fmt.text(m.engineRuns_notRead) : verdictOf(fmt, row),
    })),
    signatures: [
      signatureOf({ visit, fmt }, last?.by, fmt.text(m.engineRuns_run), last ? fmt.timestamp(last.at) : DASH),
    ],
    ...sources(fmt.text(m.engineRuns_limitsRecordManualEngine), fmt.text(dangerOf(context))),
  };
}

function verdictOf(fmt: Formatter, { isWithin, isChanged }: Pick<RunComparison, 'isWithin' | 'isChanged'>): string {
  return `${isWithin ? '✓' : fmt.text(m.outside)}${isChanged ? fmt.text(m.engineRuns_moved) : ''}`;
}

/** Names what turns: rotors where the class has no propeller. */
function dangerOf({ visit }: PackContext): Message {
  return classDataOf(visit.aircraft).products.includes('propeller')
    ? m.engineRuns_enginePropellerCanKill
    : m.engineRuns_engineRotorsCanKill;
}

/** Returns the engine or electric motor of the run, from its data plate. */
function engineText({ visit, fmt }: PackContext): string {
  const { engine, products = [] } = visit.aircraft;
  const named: typeof engine = engine ?? products.find(({ kind }) => kind === 'motor' || kind === 'engine');
  if (!named) return fmt.text(m.engineRuns_recordNamesNoEngine);
  const { maker, model, serial, maximumPowerKw } = named;
  return maximumPowerKw === undefined
    ? fmt.text(m.engineRuns_serialNumber, { maker, model, serial })
    : fmt.text(m.engineRuns_serialNumberKwMost, { maker, model, serial, maximumPowerKw: fmt.asIs(maximumPowerKw, 1) });
}
