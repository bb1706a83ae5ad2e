import type { Margin } from '../calc/loading/margin.ts';
import { isAtLeast } from '../calc/numbers/limit-met.ts';
import type { Visit } from '../record/visit.ts';
import * as figure from '../text/figure.ts';
import * as m from '../text/generated/messages.ts';
import { list, type Said, said } from '../text/message.ts';
import { termOf } from '../text/terms.ts';
import { describeLoading } from './describe-loading.ts';
import { inConfiguration } from './in-configuration.ts';
import type { Hit } from './rule.ts';
import type { Sheet } from './sheets.ts';

/** Most proposals in a sentence: the widest ones help most. */
const MAX_PROPOSALS = 3;

/** Returns a hit for every limit that a permitted loading of a configuration exceeds, with the joint limits that would do. */
export function loadingsOutside(visit: Visit, { path, name, aircraft, loading, lateral }: Sheet): Hit[] {
  const inAircraft = { ...visit, aircraft };
  const along = (loading.extremes?.margins ?? [])
    .filter(({ margin }) => !isAtLeast(margin, 0))
    .map((margin) => ({
      path: [...path, aircraft.envelopeEquations ? 'envelopeEquations' : 'envelope'],
      sentence: inConfiguration(
        name,
        withProposals(
          said(m.envelopeExceededByLegalLoading_sentence, {
            outside: outsideSentence(margin),
            loading: describeLoading(inAircraft, margin.loading),
          }),
          { aircraft, loading },
        ),
      ),
      data: { side: margin.side, margin: margin.margin, limit: margin.limit, massKg: margin.loading.massKg },
    }));
  const across = (lateral?.margins ?? [])
    .filter(({ margin }) => !isAtLeast(margin, 0))
    .map(({ side, margin, loading: at }) => ({
      path: [...path, 'lateralEnvelope'],
      sentence: inConfiguration(
        name,
        said(m.envelopeExceededByLegalLoading_sentence, {
          outside: said(m.loadingsOutside_lateral, { margin: figure.apart('arm', -margin, 0)[0], side: termOf(side) }),
          loading: describeLoading(inAircraft, at),
        }),
      ),
      data: { side, margin, massKg: at.massKg },
    }));
  return [...along, ...across];
}

function withProposals(sentence: Said, { aircraft, loading }: Pick<Sheet, 'aircraft' | 'loading'>): Said {
  const nameOf = (id: string): string => aircraft.stations.find((station) => station.id === id)?.name ?? id;
  const proposals = loading.proposals.slice(0, MAX_PROPOSALS).map(({ stations, maximumKg }) =>
    said(stations.length === 1 ? m.loadingsOutside_proposalAlone : m.loadingsOutside_proposal, {
      stations: stations.map(nameOf).join(' + '),
      maximum: figure.measure('mass', maximumKg, figure.MAX),
    }),
  );
  return proposals.length === 0 ? sentence : said(m.loadingsOutside_wouldDo, { sentence, proposals: list(proposals) });
}

/** Message, quantity and direction of the limit of each side. */
const SIDES = {
  below: [m.envelopeExceededByLegalLoading_legalLoadingLighterThan, 'mass', figure.MIN],
  above: [m.envelopeExceededByLegalLoading_legalLoadingHeavierThan, 'mass', figure.MAX],
  forward: [m.envelopeExceededByLegalLoading_legalLoadingForwardLimit, 'arm', figure.MIN],
  aft: [m.envelopeExceededByLegalLoading_legalLoadingAftLimit, 'arm', figure.MAX],
} as const;

function outsideSentence({ side, margin, limit }: Margin): Said {
  const [message, quantity, bound] = SIDES[side];
  // Enough digits that an excess is never printed as zero.
  const [excess] = figure.apart(quantity, -margin, 0);
  return said(message, { margin: excess, limit: figure.measure(quantity, limit, bound) });
}
