import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const positionQualityOverstated: Rule = {
  code: 'POSITION_QUALITY_OVERSTATED',
  severity: 'blocks',
  meaning: 'A device states an integrity that its position source cannot support',
  remedy: phrase`Set both to zero for an uncertified source`,
  source: read('CS-STAN SC005a (zero codes for uncertified sources)'),
  check: ({ visit, say }) =>
    (visit.surveillance?.devices ?? []).flatMap(
      ({ id, positionSource, sourceIntegrityLevel = 0, systemDesignAssurance = 0 }, index): Hit[] => {
        if (positionSource !== 'uncertified' || (sourceIntegrityLevel === 0 && systemDesignAssurance <= 1)) return [];
        return [
          {
            path: ['surveillance', 'devices', index, 'sourceIntegrityLevel'],
            sentence: say.words`Device ${id} has an uncertified position source, but states SIL ${sourceIntegrityLevel} and SDA ${systemDesignAssurance}`,
            data: { device: id },
          },
        ];
      },
    ),
};
