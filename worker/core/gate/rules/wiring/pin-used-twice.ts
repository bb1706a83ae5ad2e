import { nodeKey } from '../../../calc/wiring/pin-graph.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits, hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const pinUsedTwice: Rule = {
  code: 'PIN_USED_TWICE',
  severity: 'blocks',
  meaning: 'A contact is listed twice in its connector, or has several wires',
  remedy: m.pinUsedTwice_remedy,
  source: PRACTICE,
  check: ({ visit, results }) =>
    hitsIn(['wiring', 'connectors'], visit.wiring?.connectors, ({ id, pins }) =>
      hits(pins, ({ pin }, j) => {
        const first = pins.findIndex((other) => other.pin === pin);
        const wires = results.wiring?.graph.connections.get(nodeKey({ at: id, pin })) ?? [];
        if (first === j && wires.length <= 1) return undefined;
        return {
          field: ['pins', j],
          sentence:
            first === j
              ? said(m.pinUsedTwice_wiresEndPin, { count: wires.length, id, pin })
              : said(m.pinUsedTwice_connectorPinMoreThan, { id, pin }),
          data: { connector: id, pin, wires: wires.length },
        };
      }),
    ),
};
