import { classDataOf } from '../../../record/classes/index.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import type { Hit } from '../../rule.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const classContradicted: Rule = {
  code: 'CLASS_CONTRADICTED',
  severity: 'blocks',
  meaning: 'The record has a tank for fuel or an engine that the class cannot have',
  remedy: m.classContradicted_remedy,
  source: PRACTICE,
  check: ({ visit: { aircraft } }) => {
    const { canHaveFuel } = classDataOf(aircraft);
    if (canHaveFuel) return undefined;
    const of = termOf(aircraft.class);
    const tanks = aircraft.stations.flatMap(({ kind, name }, index): Hit[] =>
      kind === 'fuel'
        ? [{ path: ['aircraft', 'stations', index, 'kind'], sentence: said(m.classContradicted_tank, { name, of }) }]
        : [],
    );
    return aircraft.engine
      ? [...tanks, { path: ['aircraft', 'engine'], sentence: said(m.classContradicted_engine, { of }) }]
      : tanks;
  },
};
