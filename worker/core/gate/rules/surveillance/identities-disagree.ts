import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Rule, read } from '../../rule.ts';

export const identitiesDisagree: Rule = {
  code: 'IDENTITIES_DISAGREE',
  severity: 'blocks',
  meaning: 'Two devices send different flight identities',
  remedy: m.identitiesDisagree_remedy,
  source: read('CS-ACNS (same identity on all transmitters)'),
  check: ({ visit }) => {
    const set = (visit.surveillance?.devices ?? []).flatMap(({ flightIdentitySet }) => flightIdentitySet ?? []);
    if (new Set(set).size <= 1) return undefined;
    return {
      path: ['surveillance', 'devices'],
      sentence: said(m.identitiesDisagree_devicesSendDifferentFlight, { value: [...new Set(set)].join(', ') }),
    };
  },
};
