import type { PDFObject } from 'pdf-lib';
import type { Check } from '../check.ts';
import { contentOf, get, keysOf, listOf, nameOf, numberOf, textOf, unfollowed } from '../objects.ts';
import type { PdfFile } from '../pdf-file.ts';

const attachmentsOf = ({ objects }: PdfFile): PDFObject[] => objects.filter((object) => keysOf(object).includes('EF'));

const RELATIONSHIPS = ['Source', 'Data', 'Alternative', 'Supplement', 'Unspecified'];

/** A check of each attachment by itself. */
function each(name: string, clause: string, isKept: (file: PDFObject) => boolean): Check {
  return {
    name,
    clause,
    defects: (file) =>
      attachmentsOf(file)
        .filter((attachment) => !isKept(attachment))
        .map(
          (attachment) =>
            `${textOf(get(attachment, 'UF')) ?? textOf(get(attachment, 'F')) ?? 'an attachment'} breaks it`,
        ),
  };
}

export const ATTACHMENT_CHECKS: readonly Check[] = [
  each('attachment names', 'A-3 6.8, UA-1 7.11', (file) => {
    const names = [textOf(get(file, 'F')), textOf(get(file, 'UF'))];
    return Boolean(names[0]) && names[0] === names[1];
  }),
  each('attachment streams', 'A-3 6.8', (file) => {
    const streams = [get(file, 'EF', 'F'), get(file, 'EF', 'UF')];
    return streams[0] !== undefined && streams[0] === streams[1] && nameOf(get(streams[0], 'Type')) === 'EmbeddedFile';
  }),
  each('attachment media type', 'A-3 6.8', (file) =>
    /^[-\w+.]+\/[-\w+.]+$/.test(nameOf(get(file, 'EF', 'F', 'Subtype')) ?? ''),
  ),
  each('attachment size and date', 'ISO 32000-1 7.11.4', (file) => {
    const stream = get(file, 'EF', 'F');
    const isSized = numberOf(get(stream, 'Params', 'Size')) === contentOf(stream)?.length;
    return isSized && /^D:\d{14}/.test(textOf(get(stream, 'Params', 'ModDate')) ?? '');
  }),
  each('attachment relationship', 'A-3 6.8', (file) =>
    RELATIONSHIPS.includes(nameOf(get(file, 'AFRelationship')) ?? ''),
  ),
  each('attachment description', 'ours', (file) => Boolean(textOf(get(file, 'Desc')))),
  {
    name: 'attachments associated',
    clause: 'A-3 6.8',
    defects: (file) => {
      const associated = listOf(get(file.catalogue, 'AF'));
      const loose = attachmentsOf(file).filter((attachment) => !associated.includes(attachment));
      return loose.map((attachment) => `${textOf(get(attachment, 'UF'))} is associated with nothing`);
    },
  },
  {
    name: 'attachments listed',
    clause: 'ISO 32000-1 7.11.4',
    defects: (file) => {
      const names = unfollowed(get(file.catalogue, 'Names', 'EmbeddedFiles', 'Names'));
      const keys = names.filter((_, i) => i % 2 === 0).map((key) => textOf(key) ?? '');
      const listed = listOf(get(file.catalogue, 'Names', 'EmbeddedFiles', 'Names'));
      const missing = attachmentsOf(file).filter((attachment) => !listed.includes(attachment));
      const isSorted = keys.every((key, i) => i === 0 || (keys[i - 1] ?? '') < key);
      return [
        ...missing.map((attachment) => `${textOf(get(attachment, 'UF'))} is not listed`),
        ...(isSorted ? [] : ['names are not in order']),
      ];
    },
  },
];
