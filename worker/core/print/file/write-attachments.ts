import { textString } from '../draw/pdf-text.ts';
import type { PrintAttachment } from '../print-job.ts';
import { pdfDate } from './metadata.ts';
import type { ObjectStore } from './object-store.ts';

// Returns a media type as a name: the slash and other delimiters are written as #XX (ISO 32000-1, 7.3.5), in capitals
// because some readers, pdf-lib among them, decode no others.
function nameOf(mediaType: string): string {
  const escaped = (character: string): string =>
    `#${character.charCodeAt(0).toString(16).toUpperCase().padStart(2, '0')}`;
  return `/${mediaType.replace(/[^A-Za-z0-9.+-]/g, escaped)}`;
}

/** Names of streams by reference: finished ones, and those written into afterwards. */
export interface NamedStreams {
  parts: Map<string, string>;
  plain: Map<string, string>;
}

function writeAttachment(
  attachment: PrintAttachment,
  pages: number,
  issuedAt: string,
  store: ObjectStore,
  named: NamedStreams,
): string {
  const { name, mediaType, description, relationship, isPlain = false } = attachment;
  const bytes = typeof attachment.bytes === 'function' ? attachment.bytes(pages) : attachment.bytes;
  const params = store.add(`<</Size ${bytes.length}/CreationDate${pdfDate(issuedAt)}/ModDate${pdfDate(issuedAt)}>>`);
  const entries = { Type: '/EmbeddedFile', Subtype: nameOf(mediaType), Params: params };
  const file = isPlain ? store.addLastStream(bytes, entries) : store.addStream(bytes, entries);
  (isPlain ? named.plain : named.parts).set(file, name);
  const text = textString(name);
  return store.add(
    `<</Type/Filespec/F${text}/UF${text}/Desc${textString(description)}/AFRelationship/${relationship}/EF<</F ${file}/UF ${file}>>>>`,
  );
}

/**
 * Writes the attachments as associated files and returns their entries for the catalogue.
 *
 * @param named receives the name of each stream
 */
export function writeAttachments(
  attachments: readonly PrintAttachment[],
  pages: number,
  issuedAt: string,
  store: ObjectStore,
  named: NamedStreams,
): { names: string; catalogue: string } {
  if (attachments.length === 0) return { names: '', catalogue: '' };
  const written = attachments.map((attachment) => ({
    key: textString(attachment.name),
    file: writeAttachment(attachment, pages, issuedAt, store, named),
  }));
  if (new Set(written.map(({ key }) => key)).size < written.length)
    throw new Error('Cannot print: names of attachments must differ');
  // The keys of a name tree are in byte order.
  const sorted = [...written].sort((a, b) => (a.key < b.key ? -1 : 1));
  return {
    names: `/EmbeddedFiles<</Names[${sorted.map(({ key, file }) => `${key} ${file}`).join(' ')}]>>`,
    catalogue: `/AF[${written.map(({ file }) => file).join(' ')}]`,
  };
}
