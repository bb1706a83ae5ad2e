// The verify page: a file is digested and held against its seal here; only its digest is sent.
import { ifThere, slipmark } from '../../worker/client/client.ts';
import { sha256 } from '../../worker/pack/digest.ts';
import { claimedWorkshop } from '../../worker/seal/claimed-workshop.ts';
import { type Verdict, verifyFile } from '../../worker/seal/verify.ts';

/** The service that the page came from. */
const client = slipmark();

const form = document.querySelector<HTMLElement>('#verify');
const input = document.querySelector<HTMLInputElement>('#file');
const answer = document.querySelector<HTMLElement>('#verdict');

function show(headline: string, lines: readonly string[], isGood: boolean): void {
  if (!answer) return;
  const head = document.createElement('h2');
  head.textContent = headline;
  const list = lines.map((line) => {
    const item = document.createElement('p');
    item.textContent = line;
    return item;
  });
  answer.replaceChildren(head, ...list);
  answer.className = isGood ? 'verdict good' : 'verdict bad';
  answer.hidden = false;
}

/** The file against its own seal, by the keys of the workshop that it names; undefined where there are none to be had. */
async function ownVerdict(file: Uint8Array): Promise<Verdict | undefined> {
  const workshop = claimedWorkshop(file);
  if (workshop === undefined) return { kind: 'not-sealed' };
  const published = await ifThere(client.getSealKeys({ workshop }));
  return published && verifyFile(file, published.body);
}

async function verify(file: File): Promise<void> {
  show('Working', [`${file.name}: the digest is worked out here; the file is not sent.`], true);
  const bytes = new Uint8Array(await file.arrayBuffer());
  const digest = await sha256(bytes);
  const asked = client.verify({ body: { pdfSha256: digest } });
  const [{ body: said }, own] = await Promise.all([asked, ownVerdict(bytes)]);
  const digestLine = `SHA-256 ${digest}`;
  const { pack = '', issuedAt = '', supersededBy = '', withdrawal } = said;
  if (said.verdict === 'genuine')
    show(
      'Genuine',
      [`${pack}, issued ${issuedAt}: every byte is as it was sealed, and nothing replaces it.`, digestLine],
      true,
    );
  else if (said.verdict === 'superseded')
    show(
      'Genuine, and superseded',
      [`${pack} is as it was sealed. ${supersededBy} replaces it: use that.`, digestLine],
      false,
    );
  else if (said.verdict === 'withdrawn')
    show(
      'Withdrawn',
      [
        `${pack} is as it was sealed. ${withdrawal?.by ?? ''} withdrew it on ${withdrawal?.at ?? ''}: ${withdrawal?.reason ?? ''}.`,
        digestLine,
      ],
      false,
    );
  else show(...unknownFile(own), false);
}

/** What can be said of a file that the archive does not know. */
function unknownFile(own: Verdict | undefined): [headline: string, lines: string[]] {
  if (own?.kind === 'altered')
    return [
      'Altered',
      [`It says that it is ${own.claims.pack}, and it is not what was sealed. It differs in: ${own.parts.join('; ')}.`],
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

const start = (file: File | null | undefined): void => {
  if (!file) return;
  verify(file).catch((error: unknown) =>
    show('Not verified', [error instanceof Error ? error.message : String(error)], false),
  );
};

input?.addEventListener('change', () => start(input.files?.[0]));
form?.addEventListener('dragover', (event) => event.preventDefault());
form?.addEventListener('drop', (event) => {
  event.preventDefault();
  start((event as DragEvent).dataTransfer?.files[0]);
});
