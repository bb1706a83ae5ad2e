import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule, type RuleInput } from '../../rule.ts';

export const limitsCrossed: Rule = {
  code: 'LIMITS_CROSSED',
  severity: 'blocks',
  meaning: 'The lower limit of an engine reading or task is above the upper limit',
  remedy: m.limitsCrossed_remedy,
  source: PRACTICE,
  check: (input) =>
    hits(limited(input), ({ name, unit, least, most, path }) =>
      least === undefined || most === undefined || least <= most
        ? undefined
        : {
            path: [...path, 'least'],
            sentence: said(m.limitsCrossed_lowerAboveUpper, {
              name,
              lower: figure.asIs(least),
              upper: figure.asIs(most),
              unit,
            }),
            data: { least, most },
          },
    ),
};

interface Limited {
  name: string;
  unit: string;
  least?: number | undefined;
  most?: number | undefined;
  path: readonly (string | number)[];
}

function limited({ visit }: Pick<RuleInput, 'visit'>): Limited[] {
  const runs = (visit.engineRuns ?? []).flatMap(({ values }, run) =>
    values.map((value, index) => ({ ...value, path: ['engineRuns', run, 'values', index] })),
  );
  const tasks = (visit.inspection?.tasks ?? []).flatMap(({ id, reading }, index) =>
    reading ? [{ ...reading, name: id, path: ['inspection', 'tasks', index, 'reading'] }] : [],
  );
  const torques = (visit.measurements?.torques ?? []).map(({ fastener, unit, from, to }, index) => ({
    name: fastener,
    unit,
    least: from,
    most: to,
    path: ['measurements', 'torques', index],
  }));
  return [...runs, ...tasks, ...torques];
}
