import { sharedX } from '../../../calc/numbers/interpolate.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const sourceCurveAmbiguous: Rule = {
  code: 'SOURCE_CURVE_AMBIGUOUS',
  severity: 'blocks',
  meaning: 'A source has two outputs at one engine speed, so that neither can be counted on',
  remedy: m.sourceCurveAmbiguous_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    (visit.electrical?.sources ?? []).flatMap(({ name, outputBySpeed = [] }, index): Hit[] => {
      const engineRpm = sharedX(outputBySpeed, (point) => point.engineRpm);
      if (engineRpm === undefined) return [];
      return [
        {
          path: ['electrical', 'sources', index, 'outputBySpeed'],
          sentence: said(m.sourceCurveAmbiguous_twoOutputsEngineSpeed, { name, engineRpm: figure.plain(engineRpm, 0) }),
          data: { engineRpm },
        },
      ];
    }),
};
