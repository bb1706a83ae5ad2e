import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const swingStateTwice: Rule = {
  code: 'SWING_STATE_TWICE',
  severity: 'caution',
  meaning: 'Two swings of the compass state the same equipment, so one card is missing',
  remedy: m.swingStateTwice_remedy,
  source: PRACTICE,
  check: ({ visit: { compass } }) =>
    hitsIn(['compass', 'swings'], compass?.swings, ({ state }, index) =>
      compass?.swings.slice(0, index).some((earlier) => earlier.state === state)
        ? { field: 'state', sentence: said(m.swingStateTwice_same, { state: termOf(state) }), data: { state } }
        : undefined,
    ),
};
