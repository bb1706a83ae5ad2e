import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { inConfiguration } from '../../in-configuration.ts';
import { PRACTICE, type Rule } from '../../rule.ts';
import { sheetsOf } from '../../sheets.ts';

export const leastLoadTooHeavy: Rule = {
  code: 'LEAST_LOAD_TOO_HEAVY',
  severity: 'blocks',
  meaning: 'Even the smallest load for flight exceeds the maximum mass or another limit',
  remedy: m.leastLoadTooHeavy_remedy,
  source: PRACTICE,
  check: (input) =>
    hits(sheetsOf(input), ({ path, name, aircraft, loading }) => {
      if (loading.extremes || !aircraft.stations.some(({ kind }) => kind === 'pilot')) return undefined;
      return {
        path: [...path, 'maximumMass'],
        sentence: inConfiguration(name, said(m.leastLoadTooHeavy_evenLightestPilotNo)),
      };
    }),
};
