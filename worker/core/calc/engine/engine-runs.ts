import type { Visit } from '../../record/visit.ts';
import { instantOf } from '../../units/calendar.ts';
import { isAtLeast, isAtMost } from '../numbers/limit-met.ts';
import type { RunComparison } from './engine-runs-result.ts';

export type { RunComparison } from './engine-runs-result.ts';

type EngineRun = NonNullable<Visit['engineRuns']>[number];
type RunValue = EngineRun['values'][number];

/** A run and its index in the record. */
export interface PlacedRun {
  run: EngineRun;
  index: number;
}

/** Returns runs in the order in which they ended; if two ended at once, in the order of the record. */
export function runsByTime(runs: readonly EngineRun[]): PlacedRun[] {
  return runs
    .map((run, index) => ({ run, index }))
    .toSorted((one, other) => instantOf(one.run.at) - instantOf(other.run.at) || one.index - other.index);
}

/** Returns the last run before or after the work, by the time at which it ended, independent of its index in the record. */
export function lastRun(runs: readonly EngineRun[], when: EngineRun['when']): PlacedRun | undefined {
  return runsByTime(runs).findLast(({ run }) => run.when === when);
}

/**
 * Compares the last run before and the last run after the work, instrument by instrument: by name and unit, and in
 * order if a name occurs twice. Limits are those of the later run, else of the earlier one.
 *
 * @source common practice, no source
 */
export function compareRuns(runs: readonly EngineRun[]): RunComparison[] {
  const last = (when: EngineRun['when']): readonly RunValue[] => lastRun(runs, when)?.run.values ?? [];
  const [before, after] = [last('before'), last('after')];
  const left = [...before];
  const takeBefore = (value: RunValue): RunValue | undefined => {
    const index = left.findIndex(({ name, unit }) => name === value.name && unit === value.unit);
    return index === -1 ? undefined : left.splice(index, 1)[0];
  };
  const pairs = after.map((is) => comparisonOf(takeBefore(is), is));
  return [...pairs, ...left.map((was) => comparisonOf(was, undefined))];
}

function comparisonOf(was: RunValue | undefined, is: RunValue | undefined): RunComparison {
  const change = was && is ? is.value - was.value : undefined;
  const [least, most] = [is?.least ?? was?.least, is?.most ?? was?.most];
  const step = Math.max(was?.resolution ?? 0, is?.resolution ?? 0);
  return {
    name: is?.name ?? was?.name ?? '',
    unit: is?.unit ?? was?.unit ?? '',
    before: was?.value,
    after: is?.value,
    change,
    least,
    most,
    isWithin: is === undefined || isWithin(is.value, least, most),
    isChanged: change !== undefined && !isAtMost(Math.abs(change), step),
  };
}

function isWithin(value: number, least = Number.NEGATIVE_INFINITY, most = Number.POSITIVE_INFINITY): boolean {
  return isAtLeast(value, least) && isAtMost(value, most);
}
