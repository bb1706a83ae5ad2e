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

/** Message, quantity and direction of the limit of each side. */
const SIDES = {
  below: [m.envelopeExceededByLegalLoading_legalLoadingLighterThan, 'mass', figure.MIN],
  above: [m.envelopeExceededByLegalLoading_legalLoadingHeavierThan, 'mass', figure.MAX],
  forward: [m.envelopeExceededByLegalLoading_legalLoadingForwardLimit, 'arm', figure.MIN],
  aft: [m.envelopeExceededByLegalLoading_legalLoadingAftLimit, 'arm', figure.MAX],
} as const;

function outsideSentence(side: keyof typeof SIDES, margin: number, limit: number): Said {
  const [message, quantity, bound] = SIDES[side];
  // Enough digits that an excess is never printed as zero.
  const [excess] = figure.apart(quantity, -margin, 0);
  return said(message, { margin: excess, limit: figure.measure(quantity, limit, bound) });
}
