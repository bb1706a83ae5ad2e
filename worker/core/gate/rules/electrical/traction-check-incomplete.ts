import { isAtLeast } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

const PATH = ['electrical', 'traction'];

export const tractionCheckIncomplete: Rule = {
  code: 'TRACTION_CHECK_INCOMPLETE',
  severity: 'caution',
  meaning: 'The insulation of the traction circuit was not measured at its voltage, or its disconnect was not tried',
  remedy: m.tractionCheckIncomplete_remedy,
  source: PRACTICE,
  check: ({ visit }) => {
    const traction = visit.electrical?.traction;
    if (!traction) return undefined;
    const { nominalV, insulation, disconnect } = traction;
    const hits: Hit[] = [];
    if (!insulation)
      hits.push({
        path: [...PATH, 'insulation'],
        sentence: said(m.tractionCheckIncomplete_insulationUnmeasured),
      });
    else if (!isAtLeast(insulation.testV, nominalV))
      hits.push({
        path: [...PATH, 'insulation', 'testV'],
        sentence: said(m.tractionCheckIncomplete_testVoltageLow, {
          testV: figure.asIs(insulation.testV),
          nominalV: figure.asIs(nominalV),
        }),
        data: { testV: insulation.testV, nominalV },
      });
    if (!disconnect)
      hits.push({ path: [...PATH, 'disconnect'], sentence: said(m.tractionCheckIncomplete_disconnectUntried) });
    return hits;
  },
};
