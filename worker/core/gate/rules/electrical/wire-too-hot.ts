import { isTooHot } from '../../../calc/electrical/ampacity.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';
import { conductorName } from '../../wire-name.ts';

export const wireTooHot: Rule = {
  code: 'WIRE_TOO_HOT',
  severity: 'blocks',
  meaning: 'The surroundings of a wire are as hot as its rating, so it can carry no current',
  remedy: m.wireTooHot_remedy,
  source: read('AC 43.13-1B table 11-9 (temperature of the conductor)'),
  check: ({ visit }) =>
    hitsIn(['electrical', 'circuits'], visit.electrical?.circuits, (circuit) => {
      if (!isTooHot(circuit)) return undefined;
      const { name, ambientC, temperatureRating } = circuit;
      return {
        field: 'ambientC',
        sentence: said(m.wireTooHot_circuitSurroundingsCToo, {
          name,
          ambientC: figure.asIs(ambientC),
          circuit: conductorName(circuit),
          temperatureRating,
        }),
        data: { ambientC, ratedC: Number(temperatureRating) },
      };
    }),
};
