import type { Printer } from '../../text/print.ts';
import { dateOf, instantOf } from '../../units/calendar.ts';
import type { Visit } from '../../visit/visit.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const dateInFuture: Rule = {
  code: 'DATE_IN_FUTURE',
  severity: 'blocks',
  meaning: 'The record dates something after the present moment',
  remedy: phrase`Correct the date`,
  source: PRACTICE,
  check: ({ visit, moments, at, say }) => [
    ...moments
      .filter((stated) => instantOf(stated.at) > instantOf(at))
      .map((stated) => ({
        path: stated.path,
        sentence: say.words`The ${stated.what} is dated ${say.moment(stated.at)}, which is still to come`,
        data: { stated: stated.at, at },
      })),
    ...statedDays(visit, say)
      .filter(({ on }) => on > dateOf(at))
      .map(({ what, on, path }) => ({
        path,
        sentence: say.words`The ${what} is dated ${say.date(on)}, which is still to come`,
        data: { stated: on, at },
      })),
  ],
};

// What is said of earlier days, by the day alone.
function statedDays(
  { lives, findings = [] }: Visit,
  say: Printer,
): (Pick<Hit, 'path'> & { what: string; on: string })[] {
  return [
    ...(lives?.items ?? []).flatMap(({ id, lastDone: { date: on } }, i) =>
      on === undefined
        ? []
        : [{ what: say.words`last time that ${id} was done`, on, path: ['lives', 'items', i, 'lastDone', 'date'] }],
    ),
    ...findings.flatMap(({ id, deferral }, i) =>
      deferral
        ? [
            {
              what: say.words`first time that ${id} was deferred`,
              on: deferral.firstDeferredOn,
              path: ['findings', i, 'deferral', 'firstDeferredOn'],
            },
          ]
        : [],
    ),
  ];
}
