import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { hits } from '../../hits.ts';
import { memory, type Rule } from '../../rule.ts';
import { sameSerial } from '../../serial.ts';

export const serialDiffersFromBaseline: Rule = {
  code: 'SERIAL_DIFFERS_FROM_BASELINE',
  severity: 'blocks',
  meaning: 'A serial number read in this visit differs from the records',
  remedy: m.serialDiffersFromBaseline_remedy,
  source: memory('Part-ML, ML.A.305 (marks and serial numbers in the records)'),
  check: ({ visit }) => {
    const { aircraft, baseline } = visit;
    const pairs = [
      { product: 'Airframe', read: aircraft.serial, stated: baseline?.airframeSerial, path: ['aircraft', 'serial'] },
      {
        product: 'Engine',
        read: aircraft.engine?.serial,
        stated: baseline?.engineSerial,
        path: ['aircraft', 'engine', 'serial'],
      },
      {
        product: 'Propeller',
        read: aircraft.propeller?.serial,
        stated: baseline?.propellerSerial,
        path: ['aircraft', 'propeller', 'serial'],
      },
    ];
    return hits(pairs, ({ product, read, stated, path }) => {
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
