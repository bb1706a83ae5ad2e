import { isSameJson } from '../../../record/standing-changes.ts';
import type { Visit } from '../../../record/visit.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

/** Lists of what was found, tested or measured, in which two equal entries are one that was written twice. */
const LISTS: readonly { path: string[]; of(visit: Visit): readonly unknown[] | undefined }[] = [
  { path: ['asFound'], of: ({ asFound }) => asFound },
  { path: ['engineRuns'], of: ({ engineRuns }) => engineRuns },
  { path: ['surveillance', 'altimeters'], of: ({ surveillance }) => surveillance?.altimeters },
  { path: ['surveillance', 'staticSystems'], of: ({ surveillance }) => surveillance?.staticSystems },
  { path: ['surveillance', 'pitotSystems'], of: ({ surveillance }) => surveillance?.pitotSystems },
  { path: ['surveillance', 'radioChecks'], of: ({ surveillance }) => surveillance?.radioChecks },
  { path: ['measurements', 'torques'], of: ({ measurements }) => measurements?.torques },
  { path: ['measurements', 'magnetometers'], of: ({ measurements }) => measurements?.magnetometers },
  { path: ['measurements', 'balances'], of: ({ measurements }) => measurements?.balances },
];

export const entryTwice: Rule = {
  code: 'ENTRY_TWICE',
  severity: 'caution',
  meaning: 'Two entries of a list are the same in every figure',
  remedy: m.entryTwice_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    LISTS.flatMap(({ path, of }) => {
      const entries = of(visit) ?? [];
      return hitsIn(path, entries, (entry, index) => {
        const first = entries.findIndex((other) => isSameJson(other, entry));
        return first < index
          ? { sentence: said(m.entryTwice_same, { entry: index + 1, first: first + 1 }), data: { first } }
          : undefined;
      });
    }),
};
