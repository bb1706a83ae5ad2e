import { isTooHot } from '../../calc/electrical/ampacity.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, memory, type Rule } from '../rule.ts';
import { conductorName } from '../wire-name.ts';

export const wireTooHot: Rule = {
  code: 'WIRE_TOO_HOT',
  severity: 'blocks',
  meaning: 'The surroundings of a wire are as hot as its conductor may become, so that it can carry nothing',
  remedy: phrase`Use a wire with a higher temperature rating, or route it through a cooler place`,
  source: memory('AC 43.13-1B 11-66d(6): current heats a conductor from its surroundings up to its rating'),
  check: ({ visit, say }) =>
    (visit.electrical?.circuits ?? []).flatMap((circuit, index): Hit[] => {
      if (!isTooHot(circuit)) return [];
      const { name, ambientC, temperatureRating } = circuit;
      return [
        {
          path: ['electrical', 'circuits', index, 'ambientC'],
          sentence: say.words`Circuit ${name}: surroundings of ${say.asIs(ambientC)} °C are too hot for wire ${conductorName(circuit, say)}, rated ${temperatureRating} °C`,
          data: { ambientC, ratedC: Number(temperatureRating) },
        },
      ];
    }),
};
