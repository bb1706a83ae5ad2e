import { nodeKey } from '../../../calc/wiring/pin-graph.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const pinUsedTwice: Rule = {
  code: 'PIN_USED_TWICE',
  severity: 'blocks',
  meaning: 'A contact stands twice in its connector, or has more than one wire',
  remedy: m.pinUsedTwice_remedy,
  source: PRACTICE,
  check: ({ visit, results }) =>
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
                ? said(m.pinUsedTwice_wiresEndPin, { count: wires.length, id, pin })
                : said(m.pinUsedTwice_connectorPinMoreThan, { id, pin }),
            data: { connector: id, pin, wires: wires.length },
          },
        ];
      }),
    ),
};
