import fc from 'fast-check';
import { RELEASABLE_AT } from '../gate/assess-record.ts';
import { replaced, replacement } from './any/record.ts';
import { longest } from './any/texts.ts';
import { longText } from './any/values.ts';
import { posted } from './fixture.ts';

/** A visit of an aircraft of any class and shape, in any units, language and paper, with any texts. */
export interface AnyVisit {
  record: Record<string, unknown>;
  at: string;
  isDraft: boolean;
  /** Printed in the language that is made for tests, a third longer than English. */
  isGenerated: boolean;
}

/** Visits without much beside the aircraft are drawn more often: they print quickly. */
const base = fc.oneof(
  { weight: 1, arbitrary: fc.constantFrom('computed-only', 'weighing-only', 'four-seat-tourer') },
  { weight: 1, arbitrary: fc.constantFrom(...Object.keys(RELEASABLE_AT)) },
);

export const anyVisit: fc.Arbitrary<AnyVisit> = fc
  .record({
    base,
    replacement,
    texts: fc.oneof({ weight: 3, arbitrary: fc.constant(undefined) }, { weight: 1, arbitrary: longText(4000) }),
    isDraft: fc.boolean(),
    isGenerated: fc.boolean(),
  })
  .map(({ base: name, replacement: drawn, texts, isDraft, isGenerated }) => {
    const record = replaced(posted(name), drawn);
    return {
      record: texts === undefined ? record : longest(record, name, texts),
      at: RELEASABLE_AT[name] ?? '',
      isDraft,
      isGenerated,
    };
  });
