import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

const USUAL_LIMIT = 2;

export const standingWaveHigh: Rule = {
  code: 'STANDING_WAVE_HIGH',
  severity: 'caution',
  meaning: 'The standing wave ratio of an antenna is over its limit',
  remedy: m.standingWaveHigh_remedy,
  source: PRACTICE,
  check: ({ visit, results }) =>
    hitsIn(['antennas', 'items'], visit.antennas?.items, ({ name, standingWaveLimit = USUAL_LIMIT }, index) => {
      const ratio = results.antennas?.antennas[index]?.standingWave;
      if (ratio === undefined || isAtMost(ratio, standingWaveLimit)) return undefined;
      const [ratioText, limitText] = figure.plainApart(ratio, standingWaveLimit, 1);
      return {
        field: 'standingWaves',
        sentence: said(m.standingWaveHigh_standingWaveRatioLimit, { name, ratio: ratioText, limit: limitText }),
        data: { ratio, limit: standingWaveLimit },
      };
    }),
};
