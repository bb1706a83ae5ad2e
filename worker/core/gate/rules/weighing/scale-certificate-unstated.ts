import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { memory, type Rule } from '../../rule.ts';

export const scaleCertificateUnstated: Rule = {
  code: 'SCALE_CERTIFICATE_UNSTATED',
  severity: 'caution',
  meaning: 'A scale has no calibration certificate in the record',
  remedy: m.scaleCertificateUnstated_remedy,
  source: memory('ML.A.402 (calibrated tools)'),
  check: ({ visit: { weighing } }) =>
    hitsIn(['weighing', 'scales'], weighing?.scales, ({ id, serial, certificate }) =>
      certificate === undefined
        ? {
            field: 'certificate',
            sentence: said(m.scaleCertificateUnstated_noCertificate, { id, serial }),
            data: { scale: id },
          }
        : undefined,
    ),
};
