import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const tractionDisconnectFailed: Rule = {
  code: 'TRACTION_DISCONNECT_FAILED',
  severity: 'blocks',
  meaning: 'The emergency disconnect of the traction circuit did not open it',
  remedy: m.tractionDisconnectFailed_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    visit.electrical?.traction?.disconnect?.isOpened === false
      ? {
          path: ['electrical', 'traction', 'disconnect', 'isOpened'],
          sentence: said(m.tractionDisconnectFailed_stillLive),
        }
      : undefined,
};
