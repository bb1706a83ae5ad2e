import { type Fault, fault } from '../text/faults.ts';
import { shortName } from './bytes/short-name.ts';

/** Inks that several files mix differently, as obstacles for the file that holds them all. Each file gives the mixture of its inks by name. */
export function inkObstacles(files: readonly ReadonlyMap<string, string>[]): Fault[] {
  const mixtures = new Map<string, string>();
  const differing = new Set<string>();
  for (const [ink, mixture] of files.flatMap((inks) => [...inks])) {
    const known = mixtures.get(ink) ?? mixture;
    mixtures.set(ink, known);
    if (known !== mixture) differing.add(ink);
  }
  return [...differing].map((ink) => fault('papers-mix-ink-more-than-one', { ink: shortName(ink) }));
}
