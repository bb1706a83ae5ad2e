import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';
import { type Tested, testedName } from '../../tested-name.ts';

const LISTS = ['altimeters', 'staticSystems', 'pitotSystems'] as const;

export const testedUnnamed: Rule = {
  code: 'TESTED_UNNAMED',
  severity: 'caution',
  meaning: 'Of several tests or radio checks, one does not state which instrument, system or radio it is of',
  remedy: m.testedUnnamed_remedy,
  source: PRACTICE,
  check: ({ visit: { surveillance } }) => {
    if (!surveillance) return undefined;
    const { radioChecks = [] } = surveillance;
    const unnamed = (key: string, entries: readonly Tested[]) =>
      hitsIn(['surveillance', key], entries, (entry) =>
        testedName(entry) === undefined ? { sentence: said(m.testedUnnamed_notStatedWhich) } : undefined,
      );
    return [
      ...LISTS.flatMap((key) => {
        const entries = surveillance[key] ?? [];
        return entries.length > 1 ? unnamed(key, entries) : [];
      }),
      // Several checks of one radio are usual: only a mixture of named and unnamed ones is unclear.
      ...(radioChecks.some(({ item }) => item !== undefined)
        ? unnamed(
            'radioChecks',
            radioChecks.map(({ item }) => ({ item })),
          )
        : []),
    ];
  },
};
