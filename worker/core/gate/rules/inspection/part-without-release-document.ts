import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const partWithoutReleaseDocument: Rule = {
  code: 'PART_WITHOUT_RELEASE_DOCUMENT',
  severity: 'blocks',
  meaning: 'A part was fitted without a release document',
  remedy: m.partWithoutReleaseDocument_remedy,
  source: read('ML.A.501(a)'),
  check: ({ visit }) =>
    hitsIn(['parts'], visit.parts, ({ id, description, releaseDocument }) => {
      if (releaseDocument) return undefined;
      return {
        field: 'releaseDocument',
        sentence: said(m.partWithoutReleaseDocument_partNoReleaseDocument, { id, description }),
        data: { part: id },
      };
    }),
};
