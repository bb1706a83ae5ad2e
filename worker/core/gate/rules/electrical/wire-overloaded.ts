import { isTooHot } from '../../../calc/electrical/ampacity.ts';
import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, type Rule, read } from '../../rule.ts';
import { conductorName } from '../../wire-name.ts';

export const wireOverloaded: Rule = {
  code: 'WIRE_OVERLOADED',
  severity: 'blocks',
  meaning: 'A wire carries more than it can without end in this bundle, place and altitude',
  remedy: m.wireOverloaded_remedy,
  source: read('AC 43.13-1B table 11-9 and 11-67'),
  check: ({ visit, results }) =>
    (visit.electrical?.circuits ?? []).flatMap((circuit, index): Hit[] => {
      const result = results.electrical?.circuits[index];
      // A wire that is too hot for any current is told as such.
      if (!result?.ampacity || isTooHot(circuit) || isAtMost(result.continuousA, result.ampacity.currentA)) return [];
      const { name, gauge } = circuit;
      const { continuousA, ampacity } = result;
      const [loadText, capacityText] = figure.plainApart(continuousA, ampacity.currentA, 1);
      return [
        {
          path: ['electrical', 'circuits', index, 'gauge'],
          sentence: said(m.wireOverloaded_circuitWithoutEndWire, {
            name,
            load: loadText,
            circuit: conductorName(circuit),
            capacity: capacityText,
          }),
          data: { continuousA, ampacityA: ampacity.currentA, gauge },
        },
      ];
    }),
};
