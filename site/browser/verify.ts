// The verify page: a file is digested and held against its seal here; only its digest is sent.
import { ifThere, SlipmarkProblem, slipmark } from '../../worker/client/client.ts';
import { sha256 } from '../../worker/core/pack/digest.ts';
import { claimedWorkshop } from '../../worker/core/seal/claimed-workshop.ts';
import { type Verdict, verifyFile } from '../../worker/core/seal/verify.ts';
import { onChosenFiles, onDroppedFiles } from './dropped-files.ts';
import { errorMessage } from './error-message.ts';
import { saidOfFile } from './verify/said-of-file.ts';

/** The service that the page came from. */
const client = slipmark();

const input = document.querySelector<HTMLInputElement>('#file');
const answer = document.querySelector<HTMLElement>('#verdict');

function show(headline: string, lines: readonly string[], state: 'good' | 'bad' | 'open'): void {
  if (!answer) return;
  const head = document.createElement('h2');
  head.textContent = headline;
  const list = lines.map((line) => {
    const item = document.createElement('p');
    item.textContent = line;
    return item;
  });
  answer.replaceChildren(head, ...list);
  answer.className = `verdict ${state}`;
  answer.hidden = false;
}

/** Counts what was asked: a slow answer about an earlier file does not stand for a later one. */
let asked = 0;

/** The file against its own seal, by the keys of the workshop that it names; undefined where there are none to be had. */
async function ownVerdict(file: Uint8Array): Promise<Verdict | undefined> {
  const workshop = claimedWorkshop(file);
  if (workshop === undefined) return { kind: 'not-sealed' };
  const published = await ifThere(client.getSealKeys({ workshop }));
  return published && verifyFile(file, published.body);
}

async function verify(file: File, isWanted: () => boolean): Promise<void> {
  show('Working', [`${file.name}: the digest is worked out here; the file is not sent.`], 'open');
  const bytes = new Uint8Array(await file.arrayBuffer());
  const digest = await sha256(bytes);
  const asked = client.verify({ body: { pdfSha256: digest } });
  const [{ body: said }, own] = await Promise.all([asked, ownVerdict(bytes)]);
  if (!isWanted()) return;
  const { headline, lines, state } = saidOfFile(said, own);
  show(headline, [...lines, `SHA-256 ${digest}`], state);
}

const start = ([file]: FileList): void => {
  if (!file) return;
  const turn = ++asked;
  verify(file, () => turn === asked).catch((error: unknown) => {
    if (turn === asked) show('Not verified', [wordsOf(error)], 'bad');
  });
};

const wordsOf = (error: unknown): string =>
  error instanceof SlipmarkProblem && error.status === 0
    ? 'The service cannot be reached, so nothing is known of the file. Try again, or verify without this site as below.'
    : errorMessage(error);

if (input) onChosenFiles(input, start);
onDroppedFiles(start);
