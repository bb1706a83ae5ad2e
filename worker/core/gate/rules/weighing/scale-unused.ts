import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const scaleUnused: Rule = {
  code: 'SCALE_UNUSED',
  severity: 'caution',
  meaning: 'No point names a scale of the list, so a point may name the wrong one',
  remedy: m.scaleUnused_remedy,
  source: PRACTICE,
  check: ({ visit: { weighing } }) =>
    hitsIn(['weighing', 'scales'], weighing?.scales, ({ id, serial }) =>
      weighing?.points.some(({ scale }) => scale === id)
        ? undefined
        : { field: 'id', sentence: said(m.scaleUnused_scale, { id, serial }), data: { scale: id } },
    ),
};
