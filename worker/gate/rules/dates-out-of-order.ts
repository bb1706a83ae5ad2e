import { dateOf, instantOf } from '../../units/calendar.ts';
import type { Visit } from '../../visit/visit.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const datesOutOfOrder: Rule = {
  code: 'DATES_OUT_OF_ORDER',
  severity: 'blocks',
  meaning: 'Something is dated before the aircraft arrived or after the work had ended',
  remedy: phrase`Correct the date, or the arrival or end of work`,
  source: PRACTICE,
  check: ({ visit, moments, say }) => {
    const { arrivedAt, workEndedAt } = visit.visit;
    return moments.flatMap(({ what, at, path }): Hit[] => {
      if (instantOf(at) < instantOf(arrivedAt) && !isCarriedOver(visit, at, path)) {
        return [
          {
            path,
            sentence: say.words`The ${what} is dated ${say.moment(at)}, before the arrival ${say.moment(arrivedAt)}`,
            data: { stated: at },
          },
        ];
      }
      if (workEndedAt !== undefined && instantOf(at) > instantOf(workEndedAt)) {
        return [
          {
            path,
            sentence: say.words`The ${what} is dated ${say.moment(at)}, after the end of work ${say.moment(workEndedAt)}`,
            data: { stated: at },
          },
        ];
      }
      return [];
    });
  },
};

// A finding that was deferred before this visit was found before it, too.
function isCarriedOver(visit: Visit, at: string, [part, index, field]: Hit['path']): boolean {
  if (part !== 'findings' || field !== 'foundAt') return false;
  const deferral = visit.findings?.[Number(index)]?.deferral;
  if (!deferral) return false;
  const { firstDeferredOn } = deferral;
  return dateOf(at) <= firstDeferredOn && firstDeferredOn < dateOf(visit.visit.arrivedAt);
}
