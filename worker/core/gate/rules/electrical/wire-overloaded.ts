import { isTooHot } from '../../../calc/electrical/ampacity.ts';
import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';
import { conductorName } from '../../wire-name.ts';

export const wireOverloaded: Rule = {
  code: 'WIRE_OVERLOADED',
  severity: 'blocks',
  meaning: 'A wire carries more than its continuous rating in this bundle, zone and altitude',
  remedy: m.wireOverloaded_remedy,
  source: read('AC 43.13-1B table 11-9 and 11-67'),
  check: ({ visit, results }) =>
    hitsIn(['electrical', 'circuits'], visit.electrical?.circuits, (circuit, index) => {
      const result = results.electrical?.circuits[index];
      // A wire too hot for any current has its own rule.
      if (!result?.ampacity || isTooHot(circuit) || isAtMost(result.continuousA, result.ampacity.currentA))
        return undefined;
      const { name, gauge } = circuit;
      const { continuousA, ampacity } = result;
      const [loadText, capacityText] = figure.plainApart(continuousA, ampacity.currentA, 1);
      return {
        field: 'gauge',
        sentence: said(m.wireOverloaded_circuitWithoutEndWire, {
          name,
          load: loadText,
          circuit: conductorName(circuit),
          capacity: capacityText,
        }),
        data: { continuousA, ampacityA: ampacity.currentA, gauge },
      };
    }),
};
