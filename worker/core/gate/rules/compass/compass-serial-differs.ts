import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';
import { plainNumber } from '../../serial.ts';

export const compassSerialDiffers: Rule = {
  code: 'COMPASS_SERIAL_DIFFERS',
  severity: 'caution',
  meaning: 'The compass that was swung has another serial number than the compass aboard',
  remedy: m.compassSerialDiffers_remedy,
  source: PRACTICE,
  check: ({ visit, results }) => {
    const swung = visit.compass?.serial;
    const aboard = results.change.after.filter(({ equipmentKind }) => equipmentKind === 'compass');
    const [only] = aboard;
    if (swung === undefined || aboard.length !== 1 || only?.serial === undefined) return undefined;
    if (plainNumber(swung) === plainNumber(only.serial)) return undefined;
    return {
      path: ['compass', 'serial'],
      sentence: said(m.compassSerialDiffers_other, { swung, item: only.id, aboard: only.serial }),
      data: { item: only.id },
    };
  },
};
