import type { EquipmentKind } from '../../../record/equipment-kind.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { fittedItems } from '../../fitted-items.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';
import { sameSerial } from '../../serial.ts';

/** A product with its serial number as read and as recorded; the records follow if one of these kinds was fitted. */
interface Pair {
  product: string;
  kinds: readonly EquipmentKind[];
  read: string | undefined;
  stated: string | undefined;
  path: readonly string[];
}

export const serialDiffersFromBaseline: Rule = {
  code: 'SERIAL_DIFFERS_FROM_BASELINE',
  severity: 'blocks',
  meaning: 'A serial number read in this visit differs from the records',
  remedy: m.serialDiffersFromBaseline_remedy,
  source: PRACTICE,
  check: ({ visit, results }) => {
    const exchanged = new Set(fittedItems(results).map(({ item }) => item.equipmentKind));
    const { aircraft, baseline } = visit;
    const pairs: readonly Pair[] = [
      {
        product: 'Airframe',
        kinds: [],
        read: aircraft.serial,
        stated: baseline?.airframeSerial,
        path: ['aircraft', 'serial'],
      },
      {
        product: 'Engine',
        kinds: ['engine', 'motor'],
        read: aircraft.engine?.serial,
        stated: baseline?.engineSerial,
        path: ['aircraft', 'engine', 'serial'],
      },
      {
        product: 'Propeller',
        kinds: ['propeller'],
        read: aircraft.propeller?.serial,
        stated: baseline?.propellerSerial,
        path: ['aircraft', 'propeller', 'serial'],
      },
    ];
    return hits(pairs, ({ product, kinds, read, stated, path }) => {
      if (kinds.some((kind) => exchanged.has(kind))) return undefined;
      if (!read || !stated || sameSerial(read, stated)) return undefined;
      return {
        path,
        sentence: said(m.serialDiffersFromBaseline_serialNumberReadPapers, {
          product: termOf(product),
          read,
          stated,
        }),
        data: { read, papers: stated },
      };
    });
  },
};
