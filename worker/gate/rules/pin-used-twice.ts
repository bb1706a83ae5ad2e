import { nodeKey } from '../../calc/wiring/pin-graph.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const pinUsedTwice: Rule = {
  code: 'PIN_USED_TWICE',
  severity: 'blocks',
  meaning: 'A contact stands twice in its connector, or has more than one wire',
  remedy: phrase`One wire a contact: join wires at a splice`,
  source: PRACTICE,
  check: ({ visit, results, say }) =>
    (visit.wiring?.connectors ?? []).flatMap(({ id, pins }, i) =>
      pins.flatMap(({ pin }, j): Hit[] => {
        const first = pins.findIndex((other) => other.pin === pin);
        const wires = results.wiring?.graph.connections.get(nodeKey({ at: id, pin })) ?? [];
        if (first === j && wires.length <= 1) return [];
        return [
          {
            path: ['wiring', 'connectors', i, 'pins', j],
            sentence:
              first === j
                ? say.words`${wires.length} wires end at ${id} pin ${pin}`
                : say.words`Connector ${id} has pin ${pin} more than once`,
            data: { connector: id, pin, wires: wires.length },
          },
        ];
      }),
    ),
};
