import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { type Hit, memory, type Rule } from '../../rule.ts';
import { sameSerial } from '../../serial.ts';

export const serialDiffersFromBaseline: Rule = {
  code: 'SERIAL_DIFFERS_FROM_BASELINE',
  severity: 'blocks',
  meaning: 'A serial number read this visit is not the one in the papers',
  remedy: m.serialDiffersFromBaseline_remedy,
  source: memory('Part-ML, ML.A.305 (marks and serial numbers in the records)'),
  check: ({ visit }) => {
    const { aircraft, baseline } = visit;
    const pairs = [
      { product: 'Airframe', read: aircraft.serial, papers: baseline?.airframeSerial, path: ['aircraft', 'serial'] },
      {
        product: 'Engine',
        read: aircraft.engine?.serial,
        papers: baseline?.engineSerial,
        path: ['aircraft', 'engine', 'serial'],
      },
      {
        product: 'Propeller',
        read: aircraft.propeller?.serial,
        papers: baseline?.propellerSerial,
        path: ['aircraft', 'propeller', 'serial'],
      },
    ];
    return pairs.flatMap(({ product, read, papers, path }): Hit[] => {
      if (!read || !papers || sameSerial(read, papers)) return [];
      return [
        {
          path,
          sentence: said(m.serialDiffersFromBaseline_serialNumberReadPapers, {
            product: termOf(product),
            read,
            papers,
          }),
          data: { read, papers },
        },
      ];
    });
  },
};
