import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said, type Value } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

const BOUNDS = ['least', 'most'] as const;

export const runLimitsDiffer: Rule = {
  code: 'RUN_LIMITS_DIFFER',
  severity: 'caution',
  meaning: 'The limits of an engine reading differ between two runs',
  remedy: m.runLimitsDiffer_remedy,
  source: PRACTICE,
  check: ({ visit }) => {
    const runs = visit.engineRuns ?? [];
    return hitsIn(['engineRuns'], runs, ({ values }, run) =>
      values.flatMap(({ name, unit, ...value }, index) => {
        const earlier = runs
          .slice(0, run)
          .flatMap((each) => each.values)
          .findLast((other) => other.name === name && other.unit === unit);
        const bound = BOUNDS.find((each) => earlier && earlier[each] !== value[each]);
        if (!earlier || bound === undefined) return [];
        const stated = (limit: number | undefined): Value => (limit === undefined ? said(m.none) : figure.asIs(limit));
        const values = { name, unit, first: stated(earlier[bound]), second: stated(value[bound]) };
        return {
          field: ['values', index],
          sentence: bound === 'least' ? said(m.runLimitsDiffer_lower, values) : said(m.runLimitsDiffer_upper, values),
          data: { name, bound },
        };
      }),
    );
  },
};
