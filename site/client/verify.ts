// The verify page: a file is digested and held against its seal here; only its digest is sent.
import { ifThere, SlipmarkProblem, slipmark } from '../../worker/client/client.ts';
import { sha256 } from '../../worker/pack/digest.ts';
import { claimedWorkshop } from '../../worker/seal/claimed-workshop.ts';
import { type Verdict, verifyFile } from '../../worker/seal/verify.ts';
import { printMoment } from '../../worker/units/calendar.ts';
import { onChosenFiles, onDroppedFiles } from './dropped-files.ts';
import { messageOf } from './message-of.ts';

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
  const digestLine = `SHA-256 ${digest}`;
  const { pack = '', supersededBy = '', withdrawal } = said;
  if (said.verdict === 'genuine')
    show(
      'Genuine',
      [
        `${pack}, issued ${momentOf(said.issuedAt)}: every byte is as it was sealed, and nothing replaces it.`,
        digestLine,
      ],
      'good',
    );
  else if (said.verdict === 'superseded')
    show(
      'Genuine, and superseded',
      [`${pack} is as it was sealed. ${supersededBy} replaces it: use that.`, digestLine],
      'bad',
    );
  else if (said.verdict === 'withdrawn')
    show(
      'Withdrawn',
      [
        `${pack} is as it was sealed. ${withdrawal?.by ?? ''} withdrew it on ${momentOf(withdrawal?.at)}: ${withdrawal?.reason ?? ''}. Do not fly on it: ask the workshop.`,
        digestLine,
      ],
      'bad',
    );
  else show(...unknownFile(own), 'bad');
}

const momentOf = (iso: string | undefined): string =>
  iso === undefined ? 'a day that is not known' : printMoment(iso);

/** What can be said of a file that the archive does not know. */
function unknownFile(own: Verdict | undefined): [headline: string, lines: string[]] {
  if (own?.kind === 'altered')
    return [
      'Altered',
      [
        `It says that it is ${own.claims.pack}, and it is not what was sealed. It differs in: ${own.parts.join('; ')}. Do not rely on it: ask the workshop for the pack.`,
      ],
    ];
  if (own?.kind === 'genuine')
    return [
      'Sealed, and not in this archive',
      [`${own.claims.pack} is as ${own.claims.workshop} sealed it. This archive does not have it.`],
    ];
  if (own?.kind === 'seal-false' || own?.kind === 'key-unknown')
    return ['False seal', ['The seal in the file is not by a key of the workshop that it names.']];
  return ['Unknown', ['The file has no seal of a workshop of this archive, and is no pack of it.']];
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
    : messageOf(error);

if (input) onChosenFiles(input, start);
onDroppedFiles(start);
