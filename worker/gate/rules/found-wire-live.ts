import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const foundWireLive: Rule = {
  code: 'FOUND_WIRE_LIVE',
  severity: 'caution',
  meaning: 'A wire that was found to carry voltage is left in the aircraft with a cap on its end',
  remedy: phrase`Take it off its supply; or say what protects it and how its end is secured`,
  source: PRACTICE,
  check: ({ visit, say }) =>
    (visit.wiring?.found ?? []).flatMap(({ id, from, to, decision, isLive }, index): Hit[] =>
      decision === 'capped' && isLive
        ? [
            {
              path: ['wiring', 'found', index, 'isLive'],
              sentence: say.words`Wire ${id}, from ${from} to ${to}, carried voltage when it was found and is capped`,
              data: { wire: id },
            },
          ]
        : [],
    ),
};
