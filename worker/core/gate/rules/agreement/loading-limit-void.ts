import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import type { Station } from '../../../record/visit.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';
import { limitsOf } from '../../stated-limits.ts';

/** A manual may state a sum that is as high as its parts. */
const most = (station: Station): number =>
  'maximumMassKg' in station ? station.maximumMassKg : station.capacityL * station.densityKgPerL;

export const loadingLimitVoid: Rule = {
  code: 'LOADING_LIMIT_VOID',
  severity: 'caution',
  meaning: 'A loading limit is above all that its stations may carry, so that it limits nothing',
  remedy: m.loadingLimitVoid_remedy,
  source: PRACTICE,
  check: ({ visit: { aircraft } }) =>
    hits(limitsOf(aircraft), ({ limit: { text, stations, maximumMassKg }, path }) => {
      const named = aircraft.stations.filter(({ id }) => stations.includes(id));
      const sumKg = named.reduce((sum, station) => sum + most(station), 0);
      if (named.length === 0 || isAtMost(maximumMassKg, sumKg)) return undefined;
      const [limit, sum] = figure.apart('mass', maximumMassKg, sumKg);
      return {
        path: [...path, 'maximumMass'],
        sentence: said(m.loadingLimitVoid_limitAboveSum, { text, limit, sum }),
        data: { limitKg: maximumMassKg, sumKg },
      };
    }),
};
