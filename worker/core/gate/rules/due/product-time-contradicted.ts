import { productsOf } from '../../../calc/lives/product-time.ts';
import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import { NUMBER_CLOCKS } from '../../../record/counts.ts';
import * as m from '../../../text/generated/messages.ts';
import { type Said, said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { hits } from '../../hits.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';
import { saidClock } from '../../said-clock.ts';

/** A product that is fitted in the visit begins with the totals of the visit: else it gets time of the one before. */
export const productTimeContradicted: Rule = {
  code: 'PRODUCT_TIME_CONTRADICTED',
  severity: 'blocks',
  meaning: 'The totals at the fitting of a product, or its times, contradict each other or the meters',
  remedy: m.productTimeContradicted_remedy,
  source: PRACTICE,
  check: ({ visit, results }) =>
    hits(productsOf(visit.aircraft), ({ kind, serial, fitted, path }) => {
      const time = results.products.find((each) => each.kind === kind && each.serial === serial);
      if (!fitted || !time) return [];
      const isOfVisit = fitted.on >= visit.visit.arrivedAt.slice(0, 10);
      return NUMBER_CLOCKS.flatMap((clock): Hit[] => {
        const { now, arrival } = time.clocks.find((each) => each.clock === clock) ?? {};
        const [then, had, overhauled] = [fitted.at[clock], fitted.sinceNew[clock], fitted.sinceOverhaul?.[clock]];
        const hit = (field: string, sentence: Said): Hit[] => [
          { path: [...path, 'fitted', field, clock], sentence, data: { product: kind, serial } },
        ];
        const values = { product: termOf(kind), serial, total: saidClock(clock, then ?? 0) };
        if (then !== undefined && now !== undefined && !isAtMost(then, now))
          return hit('at', said(m.productTimeContradicted_ahead, { ...values, now: saidClock(clock, now) }));
        if (isOfVisit && then !== undefined && arrival !== undefined && !isAtMost(arrival, then))
          return hit(
            'at',
            said(m.productTimeContradicted_fittedInVisit, { ...values, arrival: saidClock(clock, arrival) }),
          );
        if (had !== undefined && overhauled !== undefined && !isAtMost(overhauled, had))
          return hit('sinceOverhaul', said(m.productTimeContradicted_overhaul, values));
        return [];
      });
    }),
};
