import { type Annex, readPdf } from './import/index.ts';
import type { Picture } from './picture/picture.ts';
import { readPicture } from './picture/read-picture.ts';
import type { PrintDocument, PrintJob } from './print-job.ts';
import { accepted, RefusedError } from './refusal.ts';

/** Files of a job, read when a document shows them. */
export interface JobFiles {
  /** Returns the picture of a source. */
  pictureOf: (source: string) => Picture;
  /** Returns the PDF whose pages follow a document; null for none. */
  annexOf: (document: PrintDocument) => Annex | null;
}

// Refused files do not get here: the caller of the job has inspected them.
function inspected<Read>(name: string, read: () => Read): Read {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof RefusedError)) throw error;
    throw new Error(`Cannot print ${name}: it must pass inspection: ${error.message}`, { cause: error });
  }
}

/** Returns the files of a job. Each picture is read once, so that it is written once. */
export function filesOf({ images = {} }: PrintJob): JobFiles {
  const known = new Map<string, Picture>();
  return {
    pictureOf(source) {
      const bytes = Object.hasOwn(images, source) ? images[source] : undefined;
      if (!bytes) throw new Error(`Cannot print: the job must hold the picture: current value is "${source}"`);
      const picture = known.get(source) ?? inspected(source, () => readPicture(bytes, false));
      known.set(source, picture);
      return picture;
    },
    annexOf: ({ id, appended }) => (appended ? inspected(id, () => accepted(readPdf(appended.bytes))) : null),
  };
}
