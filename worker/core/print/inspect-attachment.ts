import { LIMITS } from '../limits.ts';
import { type Fault, fault } from '../text/faults.ts';
import { Budget } from './bytes/budget.ts';
import { MAX_INKS, mixtureCode } from './import/inks.ts';
import { pdfStart } from './import/pdf-file.ts';
import { type Annex, readAnnex, tooManyBytes } from './import/read-annex.ts';
import { shortName } from './import/short-name.ts';
import { isPicture, readPicture } from './picture/read-picture.ts';
import { type Refusal, RefusedError } from './refusal.ts';

/**
 * Which inspection it was: a file that an earlier one let pass is looked into again, since a release must not fail for what was let pass.
 */
export const INSPECTION = 4;

/** What a file is, by its content, and whether a pack can hold it. */
export type InspectedAttachment =
  | {
      ok: true;
      kind: 'pdf';
      pages: number;
      /** Why a pack that holds it cannot claim PDF/A and PDF/UA, in words; none if it can. Of many the first, and how many more there are. */
      obstacles: Fault[];
      /** What it costs to print it, so that a pack can be bounded as a whole. */
      work: { unpackedBytes: number; objects: number; tokens: number };
      /** Inks that it names, each with a few figures that tell how it is mixed; left out where there are none. */
      inks?: Record<string, string>;
    }
  | {
      ok: true;
      kind: 'jpeg' | 'png';
      /** As seen, upright. */
      widthPx: number;
      heightPx: number;
      /** What it costs to print it, so that a pack can be bounded as a whole. */
      work: { unpackedPixels: number };
    }
  | { ok: false; refusal: Refusal; detail: Fault };

// What is known of a file is kept beside it, where 2 kB are the most.
const MAX_OBSTACLES = 10;

function firstOf(obstacles: readonly Fault[]): Fault[] {
  const more = obstacles.length - MAX_OBSTACLES;
  if (more <= 0) return [...obstacles];
  return [...obstacles.slice(0, MAX_OBSTACLES), fault('so-points-all', { count: obstacles.length })];
}

function paperFacts({ pages, obstacles, inks }: Annex, budget: Budget): InspectedAttachment {
  const named = [...inks].slice(0, MAX_INKS).map(([ink, mixture]) => [shortName(ink), mixtureCode(mixture)]);
  const { unpackedBytes, objects, tokens } = budget.spent;
  return {
    ok: true,
    kind: 'pdf',
    pages: pages.length,
    obstacles: firstOf(obstacles),
    work: { unpackedBytes, objects, tokens },
    ...(named.length > 0 && { inks: Object.fromEntries(named) }),
  };
}

function inspect(bytes: Uint8Array, budget: Budget): InspectedAttachment {
  if (bytes.length > LIMITS.annexBytes) throw tooManyBytes(bytes.length);
  if (!isPicture(bytes) && pdfStart(bytes) >= 0) return paperFacts(readAnnex(bytes, { budget, verify: true }), budget);
  const { kind, widthPx, heightPx, unpackedPixels } = readPicture(bytes, true, budget);
  return { ok: true, kind, widthPx, heightPx, work: { unpackedPixels } };
}

/**
 * Inspects a file of any content. Never rejects: what cannot be read is damaged.
 *
 * @param budget what it is charged to; all that printing the file will cost is charged here already
 */
export function inspectAttachment(bytes: Uint8Array, budget = new Budget()): Promise<InspectedAttachment> {
  try {
    return Promise.resolve(inspect(bytes, budget));
  } catch (error) {
    const refused = error instanceof RefusedError ? error : new RefusedError('damaged', fault('not-understood'));
    return Promise.resolve({ ok: false, refusal: refused.refusal, detail: refused.fault });
  }
}
