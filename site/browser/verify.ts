// Verify page: the seal of a file is checked here; only the digest of the file is sent.
import { ifThere, SlipmarkProblem, slipmark } from '../../worker/client/client.ts';
import { sha256 } from '../../worker/core/pack/digest.ts';
import { claimedWorkshop } from '../../worker/core/seal/claimed.ts';
import { type Verdict, verifyFile } from '../../worker/core/seal/verify.ts';
import { onChosenFiles, onDroppedFiles } from './dropped-files.ts';
import { element } from './element.ts';
import { errorMessage } from './error-message.ts';
import { saidOfFile } from './verify/said-of-file.ts';

/** Client of the service that the page came from. */
const client = slipmark();

const input = document.querySelector<HTMLInputElement>('#file');
const answer = document.querySelector<HTMLElement>('#verdict');

function show(headline: string, lines: readonly string[], state: 'good' | 'bad' | 'open'): void {
  if (!answer) return;
  answer.replaceChildren(element('h2', {}, headline), ...lines.map((line) => element('p', {}, line)));
  answer.className = `verdict ${state}`;
  answer.hidden = false;
}

/** Number of checks: a slow response about an earlier file must not replace that of a later one. */
let asked = 0;

/** Checks a file against its own seal with the published keys of its workshop; undefined if it publishes none. */
async function ownVerdict(file: Uint8Array): Promise<Verdict | undefined> {
  const workshop = claimedWorkshop(file);
  if (workshop === undefined) return { kind: 'not-sealed' };
  const published = await ifThere(client.getSealKeys({ workshop }));
  return published && verifyFile(file, published.body);
}

async function verify(file: File, isWanted: () => boolean): Promise<void> {
  show('Working', [`${file.name}: the digest is calculated here; the file is not sent.`], 'open');
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
