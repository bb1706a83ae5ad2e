import { CLASSES, type Class } from './judgement.ts';
import type { Outcome } from './run.ts';

type Row = Record<Class, { count: number; blocks: number; cautions: number }>;

/** A table of how many changes of each class were found, by a key of the outcome. */
export function tableOf(outcomes: readonly Outcome[], title: string, keyOf: (outcome: Outcome) => string): string {
  const groups = [...Map.groupBy(outcomes, keyOf)].map(([key, group]) => [key, rowOf(group)] as const);
  const rows = [...groups.sort((a, b) => a[0].localeCompare(b[0])), ['all', rowOf(outcomes)] as const];
  const head = [title.padEnd(18), ...CLASSES.map((name) => name.padStart(24))].join('');
  return [
    head,
    ...rows.map(([key, row]) => [key.padEnd(18), ...CLASSES.map((name) => cell(row[name]).padStart(24))].join('')),
  ].join('\n');
}

function rowOf(outcomes: readonly Outcome[]): Row {
  const row = Object.fromEntries(CLASSES.map((name) => [name, { count: 0, blocks: 0, cautions: 0 }])) as Row;
  for (const { verdict, found } of outcomes) {
    row[verdict.is].count += 1;
    if (found === 'blocks') row[verdict.is].blocks += 1;
    if (found === 'caution') row[verdict.is].cautions += 1;
  }
  return row;
}

function cell({ count, blocks, cautions }: Row[Class]): string {
  if (count === 0) return '–';
  const percent = (part: number): string => `${((part / count) * 100).toFixed(1)}`;
  return `${percent(blocks + cautions)} % (${cautions} c) of ${count}`;
}

/** Outcomes of the same field, way of going wrong and class, the most frequent first. */
export interface Group {
  pattern: string;
  operator: string;
  is: Class;
  because: string;
  outcomes: readonly Outcome[];
}

export function groupsOf(outcomes: readonly Outcome[]): Group[] {
  return [...Map.groupBy(outcomes, ({ pattern, operator, verdict }) => `${pattern}\t${operator}\t${verdict.is}`)]
    .flatMap(([, group]) => {
      const [first] = group;
      return first ? [{ pattern: first.pattern, operator: first.operator, ...first.verdict, outcomes: group }] : [];
    })
    .sort((a, b) => b.outcomes.length - a.outcomes.length || a.pattern.localeCompare(b.pattern));
}

export function groupLine({ pattern, operator, is, because, outcomes }: Group): string {
  const [first] = outcomes;
  return `${String(outcomes.length).padStart(4)}  ${is.padEnd(11)} ${operator.padEnd(14)} ${pattern}\n        ${because}; ${first?.fixture} ${first?.example}`;
}
