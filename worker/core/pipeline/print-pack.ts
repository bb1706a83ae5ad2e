import type { PackContext } from '../pack/context.ts';
import { NOT_RELEASED } from '../pack/identity.ts';
import type { PackDocument } from '../pack/pack-documents.ts';
import { imageSource } from '../pack/views/photographs.ts';
import { type Part, type PrintAttachment, type PrintDocument, type Printed, print } from '../print/index.ts';
import { emptySlot, SLOT_NAME, type Slot, slotAt, slotBytes } from '../seal/slot.ts';
import * as m from '../text/generated/messages.ts';
import { DEFAULT_PAPER, type PaperSize } from '../units/paper-size.ts';

/** Files of attachments, by the SHA-256 in the record. */
export type AttachedFiles = Readonly<Record<string, Uint8Array>>;

interface PrintPackOptions {
  recordJson: string;
  manifestJson?: string;
  paper?: PaperSize | undefined;
  files: AttachedFiles;
  hasSlot?: boolean;
}

/** Prints a pack. The mark depends only on the release: no caller can leave it out. */
export function printPack(
  context: PackContext,
  documents: readonly PackDocument[],
  options: PrintPackOptions,
): Promise<Printed> {
  const { visit, released, identity, issuedAt, recordSha256, fmt } = context;
  const { registration, maker, model } = visit.aircraft;
  return print({
    documents: documents.map((document) => withPages(document, options.files)),
    images: imagesOf(context, options.files),
    header: { left: visit.workshop.name, right: registration },
    footer: {
      left: registration,
      centre:
        released && identity
          ? fmt.text(m.printPack_packIssue, { pack: identity.pack, issue: identity.issue })
          : fmt.text(m.printPack_draftRecord, { recordSha256: recordSha256.slice(0, 12) }),
    },
    ...(released ? {} : { mark: fmt.text(NOT_RELEASED) }),
    paper: options.paper ?? visit.workshop.paper ?? DEFAULT_PAPER,
    metadata: {
      title:
        released && identity
          ? fmt.text(m.printPack_releasePack, { registration, pack: identity.pack })
          : fmt.text(m.printPack_releasePackDraft, { registration }),
      subject: fmt.text(m.printPack_modificationRecordReleasePack, { maker, model }),
      author: visit.workshop.name,
      language: fmt.locale.language,
      issuedAt,
      identifier: recordSha256.slice(0, 32),
    },
    attachments: attachments(context, options),
    say: fmt.text,
  });
}

/**
 * Returns the position of the seal slot in a printed pack, and of the parts that are signed.
 *
 * @throws Error if the pack was printed without a slot
 */
export function placesIn({ parts, plain }: Printed): { slot: Slot; parts: Part[] } {
  const slot = plain.find(({ name }) => name === SLOT_NAME);
  if (!slot) throw new Error('Cannot seal: the pack must have a slot');
  return { slot: slotAt(slot), parts };
}

/** Returns a document with the pages of its attached document. */
function withPages({ appends, ...document }: PackDocument, files: AttachedFiles): PrintDocument {
  if (appends === undefined) return document;
  const bytes = files[appends];
  if (!bytes) throw new Error(`Cannot print ${document.id}: the file ${appends} must be given`);
  return { ...document, appended: { bytes, title: document.title } };
}

/** Returns pictures by their source in documents. */
function imagesOf({ attachments }: PackContext, files: AttachedFiles): Record<string, Uint8Array> {
  const pictures = Object.entries(files).filter(([sha256]) => {
    const fact = attachments[sha256];
    return fact?.ok === true && fact.kind !== 'pdf';
  });
  return Object.fromEntries(pictures.map(([sha256, bytes]) => [imageSource(sha256), bytes]));
}

function attachments(
  { fmt }: PackContext,
  { recordJson, manifestJson, hasSlot = false }: PrintPackOptions,
): PrintAttachment[] {
  const attached = (
    name: string,
    text: string,
    description: string,
    relationship: 'Source' | 'Data',
  ): PrintAttachment => ({
    name,
    bytes: new TextEncoder().encode(text),
    mediaType: 'application/json',
    description,
    relationship,
  });
  return [
    attached('record.json', recordJson, fmt.text(m.printPack_visitRecordPackMade), 'Source'),
    ...(manifestJson
      ? [attached('manifest.json', manifestJson, fmt.text(m.printPack_digestsRecordEveryDocument), 'Data')]
      : []),
    ...(hasSlot ? [sealSlot(fmt.text(m.printPack_sealWorkshopOverEvery))] : []),
  ];
}

/** Attachment for the seal: digests of every page, of the record and of the manifest, signed. */
const sealSlot = (description: string): PrintAttachment => ({
  name: SLOT_NAME,
  bytes: (pages) => emptySlot(slotBytes(pages + 2)),
  mediaType: 'application/jose',
  description,
  relationship: 'Supplement',
  isPlain: true,
});
