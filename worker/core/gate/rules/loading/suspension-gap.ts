import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Rule, read } from '../../rule.ts';

export const suspensionGap: Rule = {
  code: 'SUSPENSION_GAP',
  severity: 'caution',
  meaning: 'The table of hang positions has no line for a permitted crew',
  remedy: m.suspensionGap_remedy,
  source: read('FAA weight-shift and powered parachute handbooks (the position goes by mass)'),
  check: ({ results }) => {
    const rows = results.loading?.suspension?.rows ?? [];
    const gap = rows.find(({ positions }) => positions.length === 0);
    if (!gap) return undefined;
    return {
      path: ['aircraft', 'suspension', 'positions'],
      sentence: said(m.suspensionGap_noPosition, { mass: figure.measure('mass', gap.decidesKg) }),
      data: { decidesKg: gap.decidesKg },
    };
  },
};
