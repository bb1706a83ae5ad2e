import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const positionQualityOverstated: Rule = {
  code: 'POSITION_QUALITY_OVERSTATED',
  severity: 'blocks',
  meaning: 'A device states an integrity that its position source cannot support',
  remedy: m.positionQualityOverstated_remedy,
  source: read('CS-STAN SC005a (zero codes for uncertified sources)'),
  check: ({ visit }) =>
    (visit.surveillance?.devices ?? []).flatMap(
      ({ id, positionSource, sourceIntegrityLevel = 0, systemDesignAssurance = 0 }, index): Hit[] => {
        if (positionSource !== 'uncertified' || (sourceIntegrityLevel === 0 && systemDesignAssurance <= 1)) return [];
        return [
          {
            path: ['surveillance', 'devices', index, 'sourceIntegrityLevel'],
            sentence: said(m.positionQualityOverstated_deviceUncertifiedPositionSource, {
              id,
              sourceIntegrityLevel,
              systemDesignAssurance,
            }),
            data: { device: id },
          },
        ];
      },
    ),
};
