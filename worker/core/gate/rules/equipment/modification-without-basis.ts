import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const modificationWithoutBasis: Rule = {
  code: 'MODIFICATION_WITHOUT_BASIS',
  severity: 'blocks',
  meaning: 'A modification does not name the data that it follows',
  remedy: m.modificationWithoutBasis_remedy,
  source: read('14 CFR 43.9 and 91.417 (description or reference to acceptable data)'),
  check: ({ visit }) =>
    hitsIn(['modifications'], visit.modifications, ({ id, basis }) => {
      if (basis) return undefined;
      return {
        field: 'basis',
        sentence: said(m.modificationWithoutBasis_modificationNamesNoData, { id }),
        data: { modification: id },
      };
    }),
};
