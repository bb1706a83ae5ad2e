import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, memory, type Rule } from '../../rule.ts';

export const partWithoutReleaseDocument: Rule = {
  code: 'PART_WITHOUT_RELEASE_DOCUMENT',
  severity: 'blocks',
  meaning: 'A part was fitted without the paper that says where it comes from',
  remedy: m.partWithoutReleaseDocument_remedy,
  source: memory('ML.A.501'),
  check: ({ visit }) =>
    (visit.parts ?? []).flatMap(({ id, description, releaseDocument }, index): Hit[] =>
      releaseDocument
        ? []
        : [
            {
              path: ['parts', index, 'releaseDocument'],
              sentence: said(m.partWithoutReleaseDocument_partNoReleaseDocument, { id, description }),
              data: { part: id },
            },
          ],
    ),
};
