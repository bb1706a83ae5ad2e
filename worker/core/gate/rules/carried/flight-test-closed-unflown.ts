import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const flightTestClosedUnflown: Rule = {
  code: 'FLIGHT_TEST_CLOSED_UNFLOWN',
  severity: 'blocks',
  meaning: 'An open flight test is closed without a satisfactory flight of this record as evidence that names it',
  remedy: m.flightTestClosedUnflown_remedy,
  source: PRACTICE,
  check: ({ visit, results }) =>
    hitsIn(['carried'], visit.carried, ({ item, answer, evidence }) => {
      const isTest = results.open.before.some((open) => open.item === item && open.kind === 'test');
      if (!isTest || answer !== 'closed') return undefined;
      const isFlown = visit.flights?.some(
        ({ id, result, openItems }) => id === evidence && result === 'satisfactory' && openItems?.includes(item),
      );
      if (isFlown) return undefined;
      return { field: 'evidence', sentence: said(m.flightTestClosedUnflown_noFlightNames, { item }), data: { item } };
    }),
};
