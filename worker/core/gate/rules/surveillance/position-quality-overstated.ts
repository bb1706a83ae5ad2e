import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const positionQualityOverstated: Rule = {
  code: 'POSITION_QUALITY_OVERSTATED',
  severity: 'blocks',
  meaning: 'A device states an integrity that its position source cannot support',
  remedy: m.positionQualityOverstated_remedy,
  source: read('CS-STAN SC005a (zero codes for uncertified sources)'),
  check: ({ visit }) =>
    hitsIn(['surveillance', 'devices'], visit.surveillance?.devices, (device) => {
      const { id, positionSource, sourceIntegrityLevel = 0, systemDesignAssurance = 0 } = device;
      const claimsQuality = sourceIntegrityLevel !== 0 || systemDesignAssurance > 1;
      if (positionSource !== 'uncertified' || !claimsQuality) return undefined;
      return {
        field: 'sourceIntegrityLevel',
        sentence: said(m.positionQualityOverstated_deviceUncertifiedPositionSource, {
          id,
          sourceIntegrityLevel,
          systemDesignAssurance,
        }),
        data: { device: id },
      };
    }),
};
