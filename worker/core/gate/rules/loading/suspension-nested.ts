import { isAtLeast, isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const suspensionNested: Rule = {
  code: 'SUSPENSION_NESTED',
  severity: 'caution',
  meaning: 'The masses of a hang position include all masses of another one',
  remedy: m.suspensionNested_remedy,
  source: PRACTICE,
  check: ({ visit: { aircraft } }) => {
    const { positions = [] } = aircraft.suspension ?? {};
    return hitsIn(['aircraft', 'suspension', 'positions'], positions, (position) => {
      const { name, fromMassKg: fromKg = 0, toMassKg: toKg = Number.MAX_VALUE } = position;
      const inside = positions.find(
        ({ fromMassKg = 0, toMassKg = Number.MAX_VALUE, ...other }) =>
          other.name !== name && isAtMost(fromKg, fromMassKg) && isAtLeast(toKg, toMassKg),
      );
      return inside && { sentence: said(m.suspensionNested_includes, { name, other: inside.name }), data: { name } };
    });
  },
};
