import { LIMITS } from '../limits.ts';
import { inspectPdf, type PdfFacts } from './import/index.ts';
import { isPicture, readPicture } from './picture/read-picture.ts';
import { orRefused, type Refused, tooManyBytes } from './refusal.ts';

/** Version of the inspection: a file accepted by an earlier version is inspected again, so that a release does not fail for it. */
export const INSPECTION = 4;

/** What a picture is, and what it costs to print it. */
interface PictureFacts {
  ok: true;
  kind: 'jpeg' | 'png';
  /** As seen, upright. */
  widthPx: number;
  heightPx: number;
  /** What it costs to print it, so that a pack can be bounded as a whole. */
  work: { unpackedPixels: number };
}

/** What a file is, by its content, and whether a pack can hold it. */
export type InspectedAttachment = PdfFacts | PictureFacts | Refused;

function pictureFacts(bytes: Uint8Array): PictureFacts {
  if (bytes.length > LIMITS.annexBytes) throw tooManyBytes(bytes.length);
  const { kind, widthPx, heightPx, unpackedPixels } = readPicture(bytes, true);
  return { ok: true, kind, widthPx, heightPx, work: { unpackedPixels } };
}

/** Inspects a file of any content. Never rejects: what cannot be read is damaged. All that printing the file will cost is charged here already. */
export function inspectAttachment(bytes: Uint8Array): Promise<InspectedAttachment> {
  return Promise.resolve(isPicture(bytes) ? orRefused(() => pictureFacts(bytes)) : inspectPdf(bytes));
}
