import { isAtLeast } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { type Said, said } from '../../../text/message.ts';
import { describeLoading } from '../../describe-loading.ts';
import { type Rule, read } from '../../rule.ts';

export const envelopeExceededByLegalLoading: Rule = {
  code: 'ENVELOPE_EXCEEDED_BY_LEGAL_LOADING',
  severity: 'blocks',
  meaning: 'A permitted loading is outside the envelope',
  remedy: m.envelopeExceededByLegalLoading_remedy,
  source: read('AC 43.13-1B ch. 10 (adverse-loaded checks)'),
  check: ({ visit, results }) => {
    const margins = results.loading?.extremes?.margins ?? [];
    return margins
      .filter(({ margin }) => !isAtLeast(margin, 0))
      .map(({ side, margin, loading, limit }) => ({
        path: ['aircraft', 'envelope'],
        sentence: said(m.envelopeExceededByLegalLoading_sentence, {
          outside: outsideSentence(side, margin, limit),
          loading: describeLoading(visit, loading),
        }),
        data: { side, margin, limit, massKg: loading.massKg },
      }));
  },
};

function outsideSentence(side: string, margin: number, limit: number): Said {
  if (side === 'below')
    return said(m.envelopeExceededByLegalLoading_legalLoadingLighterThan, {
      margin: figure.measure('mass', -margin),
      limit: figure.measure('mass', limit),
    });
  if (side === 'above')
    return said(m.envelopeExceededByLegalLoading_legalLoadingHeavierThan, {
      margin: figure.measure('mass', -margin),
      limit: figure.measure('mass', limit),
    });
  if (side === 'forward')
    return said(m.envelopeExceededByLegalLoading_legalLoadingForwardLimit, {
      margin: figure.measure('arm', -margin),
      limit: figure.measure('arm', limit),
    });
  return said(m.envelopeExceededByLegalLoading_legalLoadingAftLimit, {
    margin: figure.measure('arm', -margin),
    limit: figure.measure('arm', limit),
  });
}
