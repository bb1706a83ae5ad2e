import { type Hit, type Rule, read } from '../rule.ts';

export const controlCheckedByOne: Rule = {
  code: 'CONTROL_CHECKED_BY_ONE',
  severity: 'blocks',
  meaning: 'A control was proved by one person, or by the same person twice',
  remedy: 'Have a second person watch the surface',
  source: read('145.A.48 and its acceptable means (independent inspection)'),
  check: ({ visit }) =>
    (visit.controls?.checks ?? []).flatMap(({ axis, by, secondBy }, index): Hit[] =>
      secondBy && secondBy !== by
        ? []
        : [
            {
              path: ['controls', 'checks', index, 'secondBy'],
              sentence: `${axis} was proved by one person only`,
              data: { axis },
            },
          ],
    ),
};
