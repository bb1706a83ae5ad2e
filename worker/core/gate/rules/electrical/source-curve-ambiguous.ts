import { sharedX } from '../../../calc/numbers/interpolate.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const sourceCurveAmbiguous: Rule = {
  code: 'SOURCE_CURVE_AMBIGUOUS',
  severity: 'blocks',
  meaning: 'A source has two outputs at one engine speed, so neither can be used',
  remedy: m.sourceCurveAmbiguous_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['electrical', 'sources'], visit.electrical?.sources, ({ name, outputBySpeed = [] }) => {
      const engineRpm = sharedX(outputBySpeed, (point) => point.engineRpm);
      if (engineRpm === undefined) return undefined;
      return {
        field: 'outputBySpeed',
        sentence: said(m.sourceCurveAmbiguous_twoOutputsEngineSpeed, { name, engineRpm: figure.plain(engineRpm, 0) }),
        data: { engineRpm },
      };
    }),
};
