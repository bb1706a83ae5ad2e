import { phrase } from '../../words/words.ts';
import { type Hit, memory, type Rule } from '../rule.ts';

const USUAL_LIMIT = 2;

export const standingWaveHigh: Rule = {
  code: 'STANDING_WAVE_HIGH',
  severity: 'caution',
  meaning: 'The standing wave ratio of an antenna is over its limit',
  remedy: phrase`Look at connectors, ground plane and length; measure again`,
  source: memory('installation practice: not over 2, or the limit of the record'),
  check: ({ visit, results, say }) =>
    (visit.antennas?.items ?? []).flatMap(({ name, standingWaveLimit = USUAL_LIMIT }, index): Hit[] => {
      const ratio = results.antennas?.antennas[index]?.standingWave;
      if (ratio === undefined || ratio <= standingWaveLimit) return [];
      return [
        {
          path: ['antennas', 'items', index, 'standingWaves'],
          sentence: say.words`${name}: standing wave ratio ${say.plain(ratio, 2)}; the limit is ${say.plain(standingWaveLimit, 1)}`,
          data: { ratio, limit: standingWaveLimit },
        },
      ];
    }),
};
