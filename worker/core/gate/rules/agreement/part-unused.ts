import { usesOf } from '../../../record/part-uses.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const partUnused: Rule = {
  code: 'PART_UNUSED',
  severity: 'caution',
  meaning: 'A part was fitted, but no change, finding or task says where',
  remedy: m.partUnused_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['parts'], visit.parts, ({ id, description }) =>
      usesOf(visit, id).length === 0
        ? { sentence: said(m.partUnused_nothingNamesPart, { id, description }), data: { part: id } }
        : undefined,
    ),
};
