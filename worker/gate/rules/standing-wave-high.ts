import { isAtMost } from '../../calc/limit-met.ts';
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
      if (ratio === undefined || isAtMost(ratio, standingWaveLimit)) return [];
      const [ratioText, limitText] = say.plainApart(ratio, standingWaveLimit, 1);
      return [
        {
          path: ['antennas', 'items', index, 'standingWaves'],
          sentence: say.words`${name}: standing wave ratio ${ratioText}; the limit is ${limitText}`,
          data: { ratio, limit: standingWaveLimit },
        },
      ];
    }),
};
