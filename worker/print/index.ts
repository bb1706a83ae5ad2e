import { ENGLISH_LEXICON } from '../words/lexicon.ts';
import { type Words, wordsOf } from '../words/words.ts';
import { inkObstacles } from './annex/inks.ts';
import { type Annex, readAnnex } from './annex/read-annex.ts';
import { drawPages, type HeadsOf } from './draw/draw-pages.ts';
import { writeFile } from './file/write-file.ts';
import { setPages } from './paginate/pages.ts';
import { PAPERS } from './paper.ts';
import type { Picture } from './picture/picture.ts';
import { readPicture } from './picture/read-picture.ts';
import type { PrintDocument, Printed, PrintFinding, PrintJob } from './print-job.ts';
import { RefusedError } from './refusal.ts';
import { printableText } from './text/printable-text.ts';

export { INSPECTION, type InspectedAttachment, inspectAttachment } from './inspect-attachment.ts';
export { cleanImage } from './picture/read-picture.ts';
export type {
  Part,
  PrintAttachment,
  PrintDocument,
  Printed,
  PrintFinding,
  PrintJob,
  PrintMetadata,
} from './print-job.ts';

function headsFor(
  job: PrintJob,
  { pages, words }: { pages: number; words: Words },
  report: (finding: PrintFinding) => void,
): { headsOf: HeadsOf; mark: string } {
  const printable = (text: string): string => printableText(text, '', report);
  const [left, right] = [printable(job.header.left), printable(job.header.right)];
  const [footLeft, footCentre] = [printable(job.footer.left), printable(job.footer.centre)];
  const mark = printable(job.mark ?? '');
  const titles = new Map(job.documents.map(({ title }) => [title, printable(title)]));
  const headsOf: HeadsOf = (page, title) => ({
    headLeft: left,
    headCentre: titles.get(title) ?? '',
    headRight: right,
    footLeft,
    footCentre,
    footRight: printable(words`page ${page + 1} of ${pages}`),
    mark,
  });
  return { headsOf, mark };
}

// Files that are refused do not come here: whoever makes the job has inspected them.
function taken<Read>(name: string, read: () => Read): Read {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof RefusedError)) throw error;
    throw new Error(`Cannot print ${name}: it must pass inspection: ${error.message}`, { cause: error });
  }
}

// Each picture is read once, so that it is written once.
function picturesOf({ images = {} }: PrintJob): (source: string) => Picture {
  const known = new Map<string, Picture>();
  return (source) => {
    const bytes = Object.hasOwn(images, source) ? images[source] : undefined;
    if (!bytes) throw new Error(`Cannot print: the job must hold the picture: current value is "${source}"`);
    const picture = known.get(source) ?? taken(source, () => readPicture(bytes, false));
    known.set(source, picture);
    return picture;
  };
}

/**
 * Typesets documents of the HTML subset into one tagged, archival PDF.
 *
 * The stages are a line each: parse, style, measure and paginate set every document into pages; draw turns them into content and structure;
 * the file is written around these. Text that the fonts lack and content that does not fit are findings beside the file; markup outside
 * the subset, links that lead nowhere and malformed metadata are our own mistakes and throw.
 */
export async function print(job: PrintJob): Promise<Printed> {
  const paper = PAPERS[job.paper];
  const words = job.words ?? wordsOf(ENGLISH_LEXICON);
  const annexes: Annex[] = [];
  const annexOf = ({ id, appended }: PrintDocument): Annex | null => {
    if (!appended) return null;
    const annex = taken(id, () => readAnnex(appended.bytes));
    annexes.push(annex);
    return annex;
  };
  const set = setPages(job.documents, paper, {
    pictureOf: picturesOf(job),
    annexOf,
    mark: printableText(job.mark ?? '', '', () => {}),
    words,
  });
  const findings = [...set.findings];
  const { headsOf, mark } = headsFor(job, { pages: set.pages.length, words }, (finding) => findings.push(finding));
  const drawn = drawPages(set, paper, headsOf, mark);
  const obstacles = [...annexes.flatMap((annex) => annex.obstacles), ...inkObstacles(annexes.map(({ inks }) => inks))];
  const claims = obstacles.length === 0;
  const { bytes, parts, plain } = writeFile(drawn, paper, job, claims);
  return { bytes, parts, plain, pages: set.pages.length, startPage: set.startPage, findings, claims };
}
