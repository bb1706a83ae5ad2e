import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const leastLoadTooHeavy: Rule = {
  code: 'LEAST_LOAD_TOO_HEAVY',
  severity: 'blocks',
  meaning: 'Even the smallest load for flight exceeds the maximum mass or another limit',
  remedy: m.leastLoadTooHeavy_remedy,
  source: PRACTICE,
  check: ({ visit, results }) => {
    const { loading } = results;
    if (!loading || loading.extremes || !visit.aircraft.stations.some(({ kind }) => kind === 'pilot')) return undefined;
    return {
      path: ['aircraft', 'maximumMass'],
      sentence: said(m.leastLoadTooHeavy_evenLightestPilotNo),
    };
  },
};
