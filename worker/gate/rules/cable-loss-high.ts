import { isAtMost } from '../../calc/limit-met.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const cableLossHigh: Rule = {
  code: 'CABLE_LOSS_HIGH',
  severity: 'caution',
  meaning: 'The feed of an antenna loses more than the equipment allows',
  remedy: phrase`Shorten the cable, take a better one, or fewer connectors`,
  source: PRACTICE,
  check: ({ visit, results, say }) =>
    (visit.antennas?.items ?? []).flatMap(({ name, cable }, index): Hit[] => {
      const lossDb = results.antennas?.antennas[index]?.cableLossDb;
      if (lossDb === undefined || cable?.limitDb === undefined || isAtMost(lossDb, cable.limitDb)) return [];
      const [lossText, limitText] = say.plainApart(lossDb, cable.limitDb, 2);
      return [
        {
          path: ['antennas', 'items', index, 'cable'],
          sentence: say.words`${name}: the feed loses ${lossText} dB; the limit is ${limitText} dB`,
          data: { lossDb, limitDb: cable.limitDb },
        },
      ];
    }),
};
