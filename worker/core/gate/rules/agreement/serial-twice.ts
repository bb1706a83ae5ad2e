import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { listedPath } from '../../listed-path.ts';
import { PRACTICE, type Rule } from '../../rule.ts';
import { isNumbered } from '../../same-number.ts';
import { sameSerial } from '../../serial.ts';

export const serialTwice: Rule = {
  code: 'SERIAL_TWICE',
  severity: 'blocks',
  meaning: 'Two items aboard have the same part number and serial number',
  remedy: m.serialTwice_remedy,
  source: PRACTICE,
  check: ({ visit, results }) => {
    const { after } = results.change;
    return hits(after, (item, index) => {
      const { id, serial, partNumber, equipmentKind } = item;
      if (!isNumbered(serial)) return undefined;
      const twin = after
        .slice(0, index)
        .find(
          (other) =>
            other.partNumber === partNumber &&
            other.equipmentKind === equipmentKind &&
            other.serial !== undefined &&
            sameSerial(other.serial, serial),
        );
      if (!twin) return undefined;
      return {
        path: [...listedPath(visit, results, id), 'serial'],
        sentence: said(m.serialTwice_itemsHaveSerial, { first: twin.id, second: id, serial }),
        data: { first: twin.id, second: id, serial },
      };
    });
  },
};
