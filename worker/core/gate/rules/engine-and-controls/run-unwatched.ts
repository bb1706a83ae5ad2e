import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const runUnwatched: Rule = {
  code: 'RUN_UNWATCHED',
  severity: 'caution',
  meaning: 'Nobody is named who watched an engine run from outside',
  remedy: m.runUnwatched_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['engineRuns'], visit.engineRuns, ({ when, heldBy }) =>
      heldBy === undefined
        ? { field: 'heldBy', sentence: said(when === 'before' ? m.runUnwatched_before : m.runUnwatched_after) }
        : undefined,
    ),
};
