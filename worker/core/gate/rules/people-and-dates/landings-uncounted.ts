import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { instantOf } from '../../../units/calendar.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const landingsUncounted: Rule = {
  code: 'LANDINGS_UNCOUNTED',
  severity: 'caution',
  meaning: 'The flights of the visit had more landings than the landings at release show',
  remedy: m.landingsUncounted_remedy,
  source: PRACTICE,
  check: ({ visit }) => {
    const { landings, landingsIn } = visit.meters ?? {};
    const since = instantOf(visit.visit.arrivedAt);
    const flown = (visit.flights ?? [])
      .filter(({ from }) => instantOf(from) >= since)
      .reduce((sum, flight) => sum + (flight.landings ?? 0), 0);
    if (landings === undefined || landingsIn === undefined || landings - landingsIn >= flown) return undefined;
    return {
      path: ['meters', 'landings'],
      sentence: said(m.landingsUncounted_fewer, { flown, counted: landings - landingsIn }),
      data: { flown, counted: landings - landingsIn },
    };
  },
};
