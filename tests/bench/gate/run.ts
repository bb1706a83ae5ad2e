import { assessed } from './assessed.ts';
import { type Changes, changesOf } from './changes.ts';
import { classify, type Sound, soundOf } from './classify.ts';
import { type Found, foundIn } from './found.ts';
import type { Verdict } from './judgement.ts';
import { knownBefore } from './known.ts';
import { apply, type Change, type Operator } from './operators.ts';
import { type Json, type Place, placesOf } from './place.ts';

/** What became of one change. */
export interface Outcome {
  fixture: string;
  operator: Operator;
  pattern: string;
  /** Where, and what became what. */
  example: string;
  verdict: Verdict;
  found: Found;
}

export interface Run {
  outcomes: Outcome[];
  refused: number;
  sampledOut: number;
}

/** Where in the list of places a change belongs. */
export interface Wanted {
  isWanted(change: Change): boolean;
  most?: number | undefined;
}

/**
 * Makes, classifies and assesses every change of one record: as the first record of its aircraft; and what an earlier pack
 * or the table of people knows also as a record of an aircraft that the workshop knows.
 */
export function runOn(fixture: string, record: Json, at: string, { isWanted, most }: Wanted): Run {
  const places = placesOf(record);
  const known = knownBefore(record);
  const contexts = [undefined, known].map((context) => {
    const before = assessed(record, at, context);
    if (!before) throw new Error(`${fixture} does not fit the schema`);
    const knows: Sound['knows'] = (place, operator) => context?.knows(place, operator) ?? false;
    return { context, before, sound: soundOf(record, places, { results: before.results, at, knows }) };
  });
  const { changes, sampledOut }: Changes = changesOf(record, fixture, most);
  const run: Run = { outcomes: [], refused: 0, sampledOut };
  for (const change of changes.filter(isWanted)) {
    const isKnown = [change.place, change.also].some((place) => place && known.knows(place, change.operator));
    const undo = apply(record, change);
    for (const { context, before, sound } of isKnown ? contexts : contexts.slice(0, 1)) {
      const after = assessed(record, at, context);
      if (!after) {
        run.refused += context ? 0 : 1;
        continue;
      }
      const verdict = classify(change, record, after.results, sound);
      const { place, operator, also } = change;
      const pattern = also ? `${place.pattern} + ${String(also.path.at(-1))}` : place.pattern;
      const found = foundIn(before.findings, after.findings, movesEntries(change));
      const inContext = isKnown && !context ? asFirst(verdict) : verdict;
      if (!context || verdict.is === 'hurts' || verdict.is === 'contradicts')
        run.outcomes.push({ fixture, operator, pattern, example: exampleOf(change), verdict: inContext, found });
    }
    undo();
  }
  return run;
}

/** In the first record of an aircraft nothing else tells what only an earlier pack, or the table of people, knows. */
const asFirst = (verdict: Verdict): Verdict =>
  verdict.is === 'hurts' ? { is: 'free', by: 'first record', because: verdict.because } : verdict;

const movesEntries = ({ place, operator }: Change): boolean =>
  operator === 'reordered' ||
  operator === 'doubled' ||
  (operator === 'left out' && (place.isEntry || place.shape === 'list'));

const SHOWN = 60;

function exampleOf({ place, operator, to, also }: Change): string {
  const shown = (value: unknown): string => (JSON.stringify(value) ?? '—').slice(0, SHOWN);
  const at = (one: Place): string => `/${one.path.join('/')}`;
  if (operator === 'doubled' || operator === 'reordered') return at(place);
  if (also) return `${at(place)} + ${at(also)}`;
  return `${at(place)}: ${shown(place.value)} → ${to === undefined ? '—' : shown(to)}`;
}
