import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const notReadBack: Rule = {
  code: 'NOT_READ_BACK',
  severity: 'caution',
  meaning: 'Nobody received a device off the air',
  remedy: m.notReadBack_remedy,
  source: read('EASA SIB 2011-20 as summarised'),
  check: ({ visit }) =>
    (visit.surveillance?.devices ?? []).flatMap(({ id, kind, readBack }, index): Hit[] =>
      readBack || kind === 'locator'
        ? []
        : [
            {
              path: ['surveillance', 'devices', index, 'readBack'],
              sentence: said(m.notReadBack_deviceNotReceivedOff, { id }),
              data: { device: id },
            },
          ],
    ),
};
