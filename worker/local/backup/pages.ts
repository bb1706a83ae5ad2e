import type { PackDocument } from '../../core/core.ts';
import { onScreen } from '../../core/pack/on-screen.ts';
import { printTimestamp } from '../../core/text/dates.ts';
import { type Html, html } from '../markup/html.ts';
import type { AircraftFile, ExportedFile, ExportedPack, LedgerFile, WorkshopFile } from './format.ts';
import { asItIs, folderPage, table } from './page.ts';

const CAUTION = html`<p>Results follow from the records as given. They replace neither the maker’s data nor local rules nor the judgement of a licensed or authorised person, who alone may release.</p>`;

/** Returns the first page: the aircraft, and how to verify the folder. */
export function workshopPage({ workshop, aircraft }: WorkshopFile): string {
  const body = html`<h1>Archive of ${workshop}</h1>
<p>Packs, records and ledgers as they were exported from Slipmark, to be read without it. Keep this folder whole and unchanged.</p>
<h2>Aircraft</h2>
<ul>
${aircraft.map((name) => html`<li><a href="aircraft/${name}/index.html">${name}</a></li>\n`)}</ul>
<h2>Proof</h2>
<p><code>sha256sum -c SHA256SUMS</code> finds every file that was damaged or lost. Against intent it proves nothing, for whoever alters a file can alter that list too. What holds against intent are the seals: every <code>pack.pdf</code> is signed by the workshop, the seal names the digests of its record and manifest, the manifest those of its documents and attachments and of the pack before it, and the ledger those of all of them. <code>npm run verify -- FOLDER --keys keys.json</code> checks them all and needs no network. Take <code>keys.json</code> from a copy that you have kept elsewhere.</p>
<p>The pages are for reading; what is proved are the PDF files and the JSON files beside them.</p>
<p>Photographs are the originals, with all that the camera wrote into them, such as the place: packs show them without. Records hold names and licence numbers. Links for owners are not in this folder.</p>
${CAUTION}`;
  return folderPage({ title: `Archive of ${workshop}`, toTop: '', body });
}

/** Returns the page of an aircraft: packs, visits and history. */
export function aircraftPage(aircraft: AircraftFile, { entries }: LedgerFile): string {
  const { registration, visits, packs } = aircraft;
  const body = html`<p><a href="../../index.html">All aircraft</a></p>
<h1>${registration}</h1>
<h2>Packs</h2>
${packs.length === 0 ? html`<p>None was released.</p>` : [...packs].reverse().map(packPart)}
<h2>Visits</h2>
${table(
  'Working records, in the form that was kept last',
  ['Visit', 'State', 'Kept', 'Form', 'Files'],
  visits.map(({ visit, state, pack, updatedAt, version, attachments }) => [
    html`<a href="visits/${visit}.json">${visit}</a>`,
    state === 'released' ? `released as ${pack}` : pack ? `amended after ${pack}` : 'open',
    printTimestamp(updatedAt),
    String(version),
    filesOf(attachments, ''),
  ]),
)}
<h2>Ledger</h2>
<p>Each entry carries the digest of the one before; <a href="ledger.json">ledger.json</a> has them whole.</p>
${table(
  'Everything that happened, in order',
  ['No.', 'When', 'What', 'Digest'],
  entries.map(({ seq, at, kind, body, digest }) => [
    String(seq),
    printTimestamp(at),
    `${kind.replace('-', ' ')}: ${subjectOf(body)}`,
    html`<code>${digest}</code>`,
  ]),
)}
${CAUTION}`;
  return folderPage({ title: `${registration}: packs, visits, ledger`, toTop: '../../', body });
}

/** Returns the subject of an entry: the first of these members that it has. */
function subjectOf(body: string): string {
  const { pack, visit, link } = JSON.parse(body) as Record<string, string | undefined>;
  return pack ?? visit ?? link ?? '';
}

function packPart({ summary, attachments, ...standing }: ExportedPack): Html {
  const at = `packs/${summary.pack}`;
  return html`<section>
<h3 id="${summary.pack}">${summary.pack}</h3>
<dl>
<dt>State</dt><dd>${standingText(standing)}</dd>
<dt>Issued</dt><dd>${printTimestamp(summary.issuedAt)}, by ${summary.releasedBy}</dd>
<dt>Visit</dt><dd>${summary.visit}</dd>
<dt>Read</dt><dd><a href="${at}/pack.pdf">pack.pdf</a>, <a href="${at}/documents/index.html">its documents as pages</a></dd>
<dt>Data</dt><dd><a href="${at}/record.json">record.json</a>, <a href="${at}/manifest.json">manifest.json</a>, <a href="${at}/documents.json">documents.json</a></dd>
<dt>Files</dt><dd>${filesOf(attachments, '')}</dd>
</dl>
</section>
`;
}

function standingText({ supersededBy, withdrawal }: Pick<ExportedPack, 'supersededBy' | 'withdrawal'>): string {
  if (withdrawal) return `Withdrawn on ${printTimestamp(withdrawal.at)} by ${withdrawal.by}: ${withdrawal.reason}`;
  return supersededBy ? `Superseded by ${supersededBy}` : 'Released';
}

function filesOf(files: readonly ExportedFile[], to: string): Html | string {
  if (files.length === 0) return 'none';
  const items = files.map(({ title, file }) =>
    file === null ? html`<li>${title}: not in the archive</li>` : html`<li><a href="${to}${file}">${title}</a></li>`,
  );
  return html`<ul>${items}</ul>`;
}

/** Returns the documents of a pack, each as a page by its name, and the list of them. */
export function documentPages(pack: ExportedPack, documents: readonly PackDocument[]): Map<string, string> {
  const name = pack.summary.pack;
  const isCurrent = !pack.withdrawal && !pack.supersededBy;
  const banner = { text: `${name}: ${standingText(pack)}`, isCurrent, back: '../../../index.html' };
  const toTop = '../../../../../';
  const list = documents.map(({ id, title }) => html`<li><a href="${id}.html">${title}</a></li>\n`);
  const index = html`<h1>Documents of ${name}</h1>\n<ul>\n${list}</ul>`;
  const pages = new Map([['index', folderPage({ title: `Documents of ${name}`, toTop, banner, body: index })]]);
  // Pictures are stored once for each aircraft, under descriptive names.
  const files = new Map(pack.attachments.map(({ sha256, file }) => [sha256, file]));
  const pictures = (sha256: string): string | undefined => {
    const file = files.get(sha256);
    return file ? `../../../${file}` : undefined;
  };
  for (const { id, title, html: article } of documents) {
    const body = asItIs(onScreen(article, { base: '', ending: '.html', documents, pictures }));
    pages.set(id, folderPage({ title: `${title}, ${name}`, toTop, banner, body }));
  }
  return pages;
}
