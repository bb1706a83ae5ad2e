import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { isDeparturePast } from '../../departure-past.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const sunsetBeforeArrival: Rule = {
  code: 'SUNSET_BEFORE_ARRIVAL',
  severity: 'note',
  meaning: 'The flight home would end after sunset',
  remedy: m.sunsetBeforeArrival_remedy,
  source: PRACTICE,
  check: ({ visit, results, at }) => {
    const { daylightMin, sunsetAt, isDarkAtArrival } = results.clock;
    if (!isDarkAtArrival || isDeparturePast(visit, at)) return undefined;
    return {
      path: ['departure'],
      sentence:
        daylightMin === undefined || sunsetAt === undefined
          ? said(m.sunsetBeforeArrival_flightWouldEndDark)
          : said(m.sunsetBeforeArrival_flightWouldEndMinutes, {
              daylightMin: figure.plainApart(-daylightMin, 0, 0)[0],
              sunsetAt: figure.timestamp(sunsetAt),
            }),
      data: daylightMin === undefined ? {} : { daylightMin },
    };
  },
};
