import { isAtLeast } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

/** Below a warm day on the ground, the rating of a wire is too favourable. */
const WARM_C = 15;

export const circuitAmbientLow: Rule = {
  code: 'CIRCUIT_AMBIENT_LOW',
  severity: 'caution',
  meaning: 'The rating of a wire is calculated for an ambient temperature below a warm day',
  remedy: m.circuitAmbientLow_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['electrical', 'circuits'], visit.electrical?.circuits, ({ id, name, ambientC }) =>
      isAtLeast(ambientC, WARM_C)
        ? undefined
        : {
            field: 'ambientC',
            sentence: said(m.circuitAmbientLow_ratedCold, { name, ambient: figure.asIs(ambientC), limit: WARM_C }),
            data: { circuit: id, ambientC },
          },
    ),
};
