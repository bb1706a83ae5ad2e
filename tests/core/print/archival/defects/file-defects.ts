import { PDFName, PDFString } from 'pdf-lib';
import { get } from '../objects.ts';
import { type Defect, type Draft, name } from './draft.ts';

// Changes one text within the bytes for another of the same length.
function replaced(bytes: Buffer, from: string, to: string): Buffer {
  const at = bytes.indexOf(from, 0, 'latin1');
  bytes.write(to, at, 'latin1');
  return bytes;
}

const packet = (draft: Draft, from: string, to: string): void =>
  draft.rewrite(draft.document.catalog, 'Metadata', (content) =>
    Buffer.from(content.toString('utf8').replace(from, to)),
  );

const information = ({ document: { context } }: Draft) => context.lookup(context.trailerInfo.Info);

export const FILE_DEFECTS: readonly Defect[] = [
  { check: 'header', spoilBytes: (bytes) => replaced(bytes, '%PDF-1.7', '%PDF-1.8') },
  { check: 'file identifier', spoil: ({ document }) => delete document.context.trailerInfo.ID },
  {
    check: 'not encrypted',
    spoil: ({ document: { context } }) => {
      context.trailerInfo.Encrypt = context.register(context.obj({ Filter: 'Standard' }));
    },
  },
  { check: 'nothing after the end', spoilBytes: (bytes) => Buffer.concat([bytes, Buffer.from('more')]) },
  {
    check: 'stream lengths',
    spoilBytes: (bytes) => {
      const [said = '', length = ''] = /\/Length (\d+)\s\/Type \/Metadata/.exec(bytes.toString('latin1')) ?? [];
      return replaced(bytes, said, said.replace(length, String(Number(length) - 1)));
    },
  },
  {
    check: 'streams within the file',
    spoil: (draft) => draft.set(get(draft.having('EF'), 'EF', 'F'), 'FFilter', 'FlateDecode'),
  },
  {
    check: 'stream filters',
    spoil: ({ document: { context } }) => context.register(context.stream('', { Filter: name('LZWDecode') })),
  },
  {
    check: 'limits',
    what: 'a long string',
    spoil: (draft) => draft.document.catalog.set(name('Note'), PDFString.of('x'.repeat(32_768))),
  },
  {
    check: 'limits',
    what: 'states saved 29 deep',
    spoil: (draft) => draft.draw((content) => `${content} ${'q '.repeat(29)}${'Q '.repeat(29)}`),
  },
  { check: 'page size', spoil: (draft) => draft.set(draft.document.getPage(0).node, 'MediaBox', [0, 0, 2, 2]) },

  { check: 'metadata stream', spoil: (draft) => draft.set(get(draft.document.catalog, 'Metadata'), 'Subtype', 'Text') },
  {
    check: 'metadata readable without decoding',
    spoil: ({ document: { context, catalog } }) => {
      const stream = get(catalog, 'Metadata') as unknown as { getContents: () => Uint8Array };
      const deflated = context.flateStream(stream.getContents(), { Type: 'Metadata', Subtype: 'XML' });
      catalog.set(PDFName.of('Metadata'), context.register(deflated));
    },
  },
  { check: 'metadata well formed', spoil: (draft) => packet(draft, 'application/pdf', 'application & pdf') },
  {
    check: 'metadata equal to the information dictionary',
    what: 'another title',
    spoil: (draft) => draft.set(information(draft), 'Title', PDFString.of('Other')),
  },
  {
    check: 'metadata equal to the information dictionary',
    what: 'another date',
    spoil: (draft) => packet(draft, '<xmp:CreateDate>2026', '<xmp:CreateDate>2025'),
  },
  {
    check: 'archival claim',
    spoil: (draft) => packet(draft, '<pdfaid:conformance>A', '<pdfaid:conformance>B'),
  },
  { check: 'accessibility claim', spoil: (draft) => packet(draft, '<pdfuaid:part>1', '<pdfuaid:part>2') },
  {
    check: 'extension schema',
    spoil: (draft) => packet(draft, '<pdfaProperty:category>internal', '<pdfaProperty:category>external'),
  },
  {
    check: 'title',
    spoil: (draft) => {
      draft.set(information(draft), 'Title', PDFString.of(''));
      packet(draft, 'x-default">Pack Q-SLM-P3<', 'x-default"><');
    },
  },

  { check: 'attachment names', spoil: (draft) => draft.set(draft.having('EF'), 'F', PDFString.of('other.json')) },
  { check: 'attachment streams', spoil: (draft) => draft.drop(get(draft.having('EF'), 'EF'), 'UF') },
  { check: 'attachment media type', spoil: (draft) => draft.drop(get(draft.having('EF'), 'EF', 'F'), 'Subtype') },
  {
    check: 'attachment size and date',
    spoil: (draft) => draft.set(get(draft.having('EF'), 'EF', 'F', 'Params'), 'Size', 1),
  },
  { check: 'attachment relationship', spoil: (draft) => draft.drop(draft.having('EF'), 'AFRelationship') },
  { check: 'attachment description', spoil: (draft) => draft.drop(draft.having('EF'), 'Desc') },
  { check: 'attachments associated', spoil: (draft) => draft.drop(draft.document.catalog, 'AF') },
  { check: 'attachments listed', spoil: (draft) => draft.drop(draft.document.catalog, 'Names') },
];
