import { sharedX } from '../../calc/interpolate.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const sourceCurveAmbiguous: Rule = {
  code: 'SOURCE_CURVE_AMBIGUOUS',
  severity: 'blocks',
  meaning: 'A source has two outputs at one engine speed, so that neither can be counted on',
  remedy: phrase`Copy the curve of the source again, each speed once`,
  source: PRACTICE,
  check: ({ visit, say }) =>
    (visit.electrical?.sources ?? []).flatMap(({ name, outputBySpeed = [] }, index): Hit[] => {
      const engineRpm = sharedX(outputBySpeed, (point) => point.engineRpm);
      if (engineRpm === undefined) return [];
      return [
        {
          path: ['electrical', 'sources', index, 'outputBySpeed'],
          sentence: say.words`${name}: two outputs at an engine speed of ${say.plain(engineRpm, 0)} per minute`,
          data: { engineRpm },
        },
      ];
    }),
};
