import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Rule, read } from '../../rule.ts';

export const runsTooFew: Rule = {
  code: 'RUNS_TOO_FEW',
  severity: 'caution',
  meaning: 'Only one run was weighed, so the scatter is unknown',
  remedy: m.runsTooFew_remedy,
  source: read('CAP 562 weighing leaflet (several readings)'),
  check: ({ visit }) => {
    const runs = Math.min(...(visit.weighing?.points ?? []).map(({ readingsKg }) => readingsKg.length));
    if (runs !== 1) return undefined;
    return {
      path: ['weighing', 'points'],
      sentence: said(m.runsTooFew_onlyOneRunWeighed),
      data: { runs },
    };
  },
};
