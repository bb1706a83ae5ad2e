import type { CircuitResult } from '../calc/electrical/electrical-result.ts';
import { DROP_LIMIT_V } from '../calc/electrical/voltage-drop.ts';
import { isAtMost } from '../calc/numbers/limit-met.ts';
import * as figure from '../text/figure.ts';
import { type Message, said, type Value } from '../text/message.ts';
import { termOf } from '../text/terms.ts';
import { hitsIn } from './hits.ts';
import type { Hit, RuleInput } from './rule.ts';

/** Limit of a drop: that of continuous loads was read, that of intermittent loads was not. */
type LimitOf = 'continuous' | 'intermittent';

interface Drop {
  what: string;
  limitOf: LimitOf;
  dropV: number;
  limitV: number;
}

/** Reports the voltage drops of circuits, other than main feeders, that exceed a limit. */
export function dropsOver(
  { visit, results }: RuleInput,
  limitOf: LimitOf,
  message: Message<{ circuit: Value; what: Value; drop: Value; limit: Value }>,
): Hit[] {
  return hitsIn(['electrical', 'circuits'], visit.electrical?.circuits, (circuit, index) => {
    if (circuit.mainFeeder) return undefined;
    const continuousV = DROP_LIMIT_V[visit.electrical?.system ?? '14-volt'].continuous;
    return dropsOf(results.electrical?.circuits[index], circuit.measuredDropV, continuousV)
      .filter((drop) => drop.limitOf === limitOf && !isAtMost(drop.dropV, drop.limitV))
      .map(({ what, dropV, limitV }) => {
        const [drop, limit] = figure.plainApart(dropV, limitV, 1);
        return {
          sentence: said(message, { circuit: circuit.name, what: termOf(what), drop, limit }),
          data: { dropV, limitV },
        };
      });
  });
}

/** Voltage drops of a circuit with their limits; the limit of a measured drop is that of the load then on. */
function dropsOf(result: CircuitResult | undefined, measuredV: number | undefined, continuousV: number): Drop[] {
  const { continuousDrop, peakDrop, measuredLimitV: limitV } = result ?? {};
  return [
    ...(continuousDrop ? [{ what: 'continuous', limitOf: 'continuous' as const, ...continuousDrop }] : []),
    ...(peakDrop ? [{ what: 'intermittent', limitOf: 'intermittent' as const, ...peakDrop }] : []),
    ...(measuredV === undefined || limitV === undefined
      ? []
      : [
          {
            what: 'measured',
            limitOf: limitV > continuousV ? ('intermittent' as const) : ('continuous' as const),
            dropV: measuredV,
            limitV,
          },
        ]),
  ];
}
