/** Media range of an `Accept` header with its weight. */
interface MediaRange {
  type: string;
  weight: number;
}

/**
 * Returns the first of the offered media types that the client prefers (RFC 9110, 12.5.1), or undefined if it accepts
 * none. Without an `Accept` header, the first offer.
 */
export function preferred<const Offer extends string>(
  accept: string | null,
  offers: readonly Offer[],
): Offer | undefined {
  if (!accept?.trim()) return offers[0];
  const ranges = accept.split(',').map(rangeOf);
  const weighed = offers.map((offer) => ({ offer, weight: weightOf(offer, ranges) }));
  const best = weighed.reduce((a, b) => (b.weight > a.weight ? b : a));
  return best.weight > 0 ? best.offer : undefined;
}

function rangeOf(text: string): MediaRange {
  const [type = '', ...parameters] = text.split(';').map((part) => part.trim().toLowerCase());
  const quality = parameters.find((parameter) => parameter.startsWith('q='));
  const weight = quality ? Number(quality.slice(2)) : 1;
  return { type, weight: Number.isFinite(weight) ? weight : 0 };
}

/** Returns the weight of the most specific range that matches a type. */
function weightOf(offer: string, ranges: readonly MediaRange[]): number {
  const candidates = [offer, `${offer.split('/')[0]}/*`, '*/*'];
  const found = candidates.map((type) => ranges.find((range) => range.type === type)).find((range) => range);
  return found?.weight ?? 0;
}
