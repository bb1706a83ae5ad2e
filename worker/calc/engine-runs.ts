import type { Visit } from '../visit/visit.ts';

type EngineRun = NonNullable<Visit['engineRuns']>[number];
type RunValue = EngineRun['values'][number];

/** One instrument before and after the work, against its limits. */
export interface RunComparison {
  name: string;
  unit: string;
  before: number | undefined;
  after: number | undefined;
  change: number | undefined;
  least: number | undefined;
  most: number | undefined;
  isWithin: boolean;
  /** The change is more than reading two displays explains: a whole step. */
  isChanged: boolean;
}

/** The last run before and the last run after the work, instrument by instrument. */
export function compareRuns(runs: readonly EngineRun[]): RunComparison[] {
  const last = (when: EngineRun['when']): readonly RunValue[] =>
    runs.findLast((run) => run.when === when)?.values ?? [];
  const [before, after] = [last('before'), last('after')];
  const names = [...new Set([...before, ...after].map(({ name }) => name))];
  return names.map((name) => {
    const was = before.find((value) => value.name === name);
    const is = after.find((value) => value.name === name);
    return comparisonOf(name, was, is);
  });
}

function comparisonOf(name: string, was: RunValue | undefined, is: RunValue | undefined): RunComparison {
  const limits = is ?? was;
  const change = was && is ? is.value - was.value : undefined;
  const step = Math.max(was?.resolution ?? 0, is?.resolution ?? 0);
  return {
    name,
    unit: limits?.unit ?? '',
    before: was?.value,
    after: is?.value,
    change,
    least: limits?.least,
    most: limits?.most,
    isWithin: is === undefined || isWithin(is),
    isChanged: change !== undefined && Math.abs(change) > step + 1e-9,
  };
}

function isWithin({ value, least, most }: RunValue): boolean {
  return value >= (least ?? Number.NEGATIVE_INFINITY) && value <= (most ?? Number.POSITIVE_INFINITY);
}
