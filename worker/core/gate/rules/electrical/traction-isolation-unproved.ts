import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const tractionIsolationUnproved: Rule = {
  code: 'TRACTION_ISOLATION_UNPROVED',
  severity: 'blocks',
  meaning: 'Two people did not prove before the work that the traction circuit was dead',
  remedy: m.tractionIsolationUnproved_remedy,
  source: PRACTICE,
  check: ({ visit }) => {
    const traction = visit.electrical?.traction;
    if (!traction) return undefined;
    const { isolation } = traction;
    const isBySecond = isolation?.secondBy !== undefined && isolation.secondBy !== isolation.by;
    if (isBySecond) return undefined;
    const nominalV = figure.asIs(traction.nominalV);
    const path = ['electrical', 'traction', 'isolation'];
    const data = { nominalV: traction.nominalV };
    return isolation
      ? { path: [...path, 'secondBy'], sentence: said(m.tractionIsolationUnproved_onePerson, { nominalV }), data }
      : { path, sentence: said(m.tractionIsolationUnproved_notStated, { nominalV }), data };
  },
};
