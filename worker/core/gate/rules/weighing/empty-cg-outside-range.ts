import { isAtLeast, isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { inConfiguration } from '../../in-configuration.ts';
import { armOutside } from '../../range-text.ts';
import { type Rule, read } from '../../rule.ts';
import { sheetsOf } from '../../sheets.ts';

export const emptyCgOutsideRange: Rule = {
  code: 'EMPTY_CG_OUTSIDE_RANGE',
  severity: 'blocks',
  meaning: 'The empty centre of gravity is outside its permitted range',
  remedy: m.emptyCgOutsideRange_remedy,
  source: read('AC 43.13-1B ch. 10 (empty-weight CG range)'),
  check: (input) =>
    hits(sheetsOf(input), ({ path, name, aircraft, empty: { armMm } }) => {
      const range = aircraft.emptyRange;
      if (!range || (isAtLeast(armMm, range.forwardMm) && isAtMost(armMm, range.aftMm))) return undefined;
      const { arm, forward, aft } = armOutside(armMm, range);
      return {
        path: [...path, 'emptyRange'],
        sentence: inConfiguration(name, said(m.emptyCgOutsideRange_emptyCentreGravityOutside, { arm, forward, aft })),
        data: { armMm, forwardMm: range.forwardMm, aftMm: range.aftMm },
      };
    }),
};
