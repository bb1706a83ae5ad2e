import { LIMITS } from '../limits.ts';
import { phrase } from '../words/words.ts';
import { pdfStart } from './annex/pdf-file.ts';
import { readAnnex, tooManyBytes } from './annex/read-annex.ts';
import { isPicture, readPicture } from './picture/read-picture.ts';
import { type Refusal, RefusedError } from './refusal.ts';

/** What a file is, by its content, and whether a pack can hold it. */
export type InspectedAttachment =
  | {
      ok: true;
      kind: 'pdf';
      pages: number;
      /** Why a pack that holds it cannot claim PDF/A and PDF/UA, in words; none if it can. */
      obstacles: string[];
    }
  | {
      ok: true;
      kind: 'jpeg' | 'png';
      /** As seen, upright. */
      widthPx: number;
      heightPx: number;
    }
  | { ok: false; refusal: Refusal; detail: string };

function inspect(bytes: Uint8Array): InspectedAttachment {
  if (bytes.length > LIMITS.annexBytes) throw tooManyBytes(bytes.length);
  if (!isPicture(bytes) && pdfStart(bytes) >= 0) {
    const { pages, obstacles } = readAnnex(bytes);
    return { ok: true, kind: 'pdf', pages: pages.length, obstacles: [...obstacles] };
  }
  const { kind, widthPx, heightPx } = readPicture(bytes, true);
  return { ok: true, kind, widthPx, heightPx };
}

/** Inspects a file of any content. Never rejects: what cannot be read is damaged. */
export function inspectAttachment(bytes: Uint8Array): Promise<InspectedAttachment> {
  try {
    return Promise.resolve(inspect(bytes));
  } catch (error) {
    const refused =
      error instanceof RefusedError ? error : new RefusedError('damaged', phrase`it is not to be understood`);
    return Promise.resolve({ ok: false, refusal: refused.refusal, detail: refused.message });
  }
}
