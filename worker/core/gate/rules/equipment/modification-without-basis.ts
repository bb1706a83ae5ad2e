import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const modificationWithoutBasis: Rule = {
  code: 'MODIFICATION_WITHOUT_BASIS',
  severity: 'blocks',
  meaning: 'A modification names no data that the work follows',
  remedy: m.modificationWithoutBasis_remedy,
  source: read('14 CFR 43.9 and 91.417 (description or reference to acceptable data)'),
  check: ({ visit }) =>
    (visit.modifications ?? []).flatMap(({ id, basis }, index): Hit[] =>
      basis
        ? []
        : [
            {
              path: ['modifications', index, 'basis'],
              sentence: said(m.modificationWithoutBasis_modificationNamesNoData, { id }),
              data: { modification: id },
            },
          ],
    ),
};
