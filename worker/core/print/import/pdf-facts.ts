import { type Fault, fault } from '../../text/faults.ts';
import type { Work } from '../bytes/budget.ts';
import { shortName } from '../bytes/short-name.ts';
import { crc32 } from '../picture/crc32.ts';
import { MAX_INKS } from './inks.ts';
import type { Annex } from './read-annex.ts';

/** What a PDF is, and what it costs to print it. */
export interface PdfFacts {
  ok: true;
  kind: 'pdf';
  pages: number;
  /** Why a pack that holds it cannot claim PDF/A and PDF/UA; none if it can. Of many the first, and how many more there are. */
  obstacles: Fault[];
  /** What it costs to print it, so that a pack can be bounded as a whole. */
  work: { unpackedBytes: number; objects: number; tokens: number };
  /** Inks that it names, each with a few figures that tell how it is mixed; left out if it names none. */
  inks?: Record<string, string>;
}

// What is known of a file is kept beside it, where 2 kB are the most.
const MAX_OBSTACLES = 10;

function firstOf(obstacles: readonly Fault[]): Fault[] {
  const more = obstacles.length - MAX_OBSTACLES;
  if (more <= 0) return [...obstacles];
  return [...obstacles.slice(0, MAX_OBSTACLES), fault('so-points-all', { count: obstacles.length })];
}

// A mixture as a few figures, to be kept with what is known of a file.
function mixtureCode(mixture: string): string {
  return crc32(new TextEncoder().encode(mixture)).toString(16).padStart(8, '0');
}

/** The facts of a PDF that was read, and what reading it was charged. */
export function pdfFacts({ pages, obstacles, inks }: Annex, spent: Readonly<Record<Work, number>>): PdfFacts {
  const named = [...inks].slice(0, MAX_INKS).map(([ink, mixture]) => [shortName(ink), mixtureCode(mixture)]);
  const { unpackedBytes, objects, tokens } = spent;
  return {
    ok: true,
    kind: 'pdf',
    pages: pages.length,
    obstacles: firstOf(obstacles),
    work: { unpackedBytes, objects, tokens },
    ...(named.length > 0 && { inks: Object.fromEntries(named) }),
  };
}
