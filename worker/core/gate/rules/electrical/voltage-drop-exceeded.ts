import type { CircuitResult } from '../../../calc/electrical/electrical-result.ts';
import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { hitsIn } from '../../hits.ts';
import { memory, type Rule } from '../../rule.ts';

export const voltageDropExceeded: Rule = {
  code: 'VOLTAGE_DROP_EXCEEDED',
  severity: 'blocks',
  meaning: 'The voltage drop from bus to equipment is over the limit',
  remedy: m.voltageDropExceeded_remedy,
  source: memory('AC 43.13-1B table 11-6'),
  check: ({ visit, results }) =>
    hitsIn(['electrical', 'circuits'], visit.electrical?.circuits, (circuit, index) => {
      if (circuit.mainFeeder) return undefined;
      const result = results.electrical?.circuits[index];
      return dropsOf(result, circuit.measuredDropV)
        .filter(({ dropV, limitV }) => !isAtMost(dropV, limitV))
        .map(({ what, dropV, limitV }) => {
          const [dropText, limitText] = figure.plainApart(dropV, limitV, 1);
          return {
            sentence: said(m.voltageDropExceeded_circuitVoltageDropV, {
              circuit: circuit.name,
              what: termOf(what),
              drop: dropText,
              limit: limitText,
            }),
            data: { dropV, limitV },
          };
        });
    }),
};

/** Voltage drops of a circuit with their limits; the limit of a measured drop is that of the load then on. */
function dropsOf(
  result: CircuitResult | undefined,
  measuredV: number | undefined,
): { what: string; dropV: number; limitV: number }[] {
  const { continuousDrop, peakDrop, measuredLimitV: limitV } = result ?? {};
  return [
    ...(continuousDrop ? [{ what: 'continuous', ...continuousDrop }] : []),
    ...(peakDrop ? [{ what: 'intermittent', ...peakDrop }] : []),
    ...(measuredV === undefined || limitV === undefined ? [] : [{ what: 'measured', dropV: measuredV, limitV }]),
  ];
}
