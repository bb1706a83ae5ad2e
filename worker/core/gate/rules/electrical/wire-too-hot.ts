import { isTooHot } from '../../../calc/electrical/ampacity.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, memory, type Rule } from '../../rule.ts';
import { conductorName } from '../../wire-name.ts';

export const wireTooHot: Rule = {
  code: 'WIRE_TOO_HOT',
  severity: 'blocks',
  meaning: 'The surroundings of a wire are as hot as its conductor may become, so that it can carry nothing',
  remedy: m.wireTooHot_remedy,
  source: memory('AC 43.13-1B 11-66d(6): current heats a conductor from its surroundings up to its rating'),
  check: ({ visit }) =>
    (visit.electrical?.circuits ?? []).flatMap((circuit, index): Hit[] => {
      if (!isTooHot(circuit)) return [];
      const { name, ambientC, temperatureRating } = circuit;
      return [
        {
          path: ['electrical', 'circuits', index, 'ambientC'],
          sentence: said(m.wireTooHot_circuitSurroundingsCToo, {
            name,
            ambientC: figure.asIs(ambientC),
            circuit: conductorName(circuit),
            temperatureRating,
          }),
          data: { ambientC, ratedC: Number(temperatureRating) },
        },
      ];
    }),
};
