import type { Check } from '../check.ts';
import { contentOf, get, keysOf, nameOf, textOf } from '../objects.ts';
import type { PdfFile } from '../pdf-file.ts';

const packetOf = ({ catalogue }: PdfFile): string => new TextDecoder().decode(contentOf(get(catalogue, 'Metadata')));

function decoded(xml: string): string {
  return xml.replace(
    /&(lt|gt|amp|quot|apos);/g,
    (_, name: string) => ({ lt: '<', gt: '>', amp: '&', quot: '"', apos: "'" })[name] ?? '',
  );
}

// The packet is ours and says each property once, as an element; the first text within it is the value.
function property(packet: string, name: string): string | undefined {
  const inside = new RegExp(`<${name}>([\\s\\S]*?)</${name}>`).exec(packet)?.[1];
  return inside === undefined ? undefined : decoded(inside.replace(/<[^>]*>/g, ''));
}

const TEXTS = [
  ['Title', 'dc:title'],
  ['Author', 'dc:creator'],
  ['Subject', 'dc:description'],
  ['Creator', 'xmp:CreatorTool'],
  ['Producer', 'pdf:Producer'],
] as const;
const DATES = [
  ['CreationDate', 'xmp:CreateDate'],
  ['ModDate', 'xmp:ModifyDate'],
] as const;

// D:20260314150926+01'00' names the same instant as 2026-03-14T15:09:26+01:00.
const instant = (date: string | undefined): string =>
  (date ?? '').replace(/[^0-9+-]/g, '').replace(/^(\d{4})-(\d\d)-(\d\d)/, '$1$2$3');

function informationDefects(file: PdfFile): string[] {
  const packet = packetOf(file);
  const entry = (key: string): string | undefined => textOf(get(file.information, key));
  return [
    ...TEXTS.filter(([key, name]) => entry(key) !== property(packet, name)),
    ...DATES.filter(([key, name]) => instant(entry(key)) !== instant(property(packet, name))),
  ].map(([key, name]) => `${key} and ${name} differ`);
}

// XML 1.0, 2.2.
const NO_XML = /[^\t\n\r\x20-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/u;

function claimDefects(file: PdfFile, claims: Readonly<Record<string, string>>): string[] {
  const packet = packetOf(file);
  return Object.entries(claims)
    .filter(([name, value]) => property(packet, name) !== value)
    .map(([name, value]) => `${name} is ${property(packet, name) ?? 'missing'}, not ${value}`);
}

export const METADATA_CHECKS: readonly Check[] = [
  {
    name: 'metadata stream',
    clause: 'A-3 6.6.2.1, UA-1 7.1',
    defects: ({ catalogue }) => {
      const stream = get(catalogue, 'Metadata');
      const isMetadata = nameOf(get(stream, 'Type')) === 'Metadata' && nameOf(get(stream, 'Subtype')) === 'XML';
      return isMetadata ? [] : ['the catalogue names no metadata stream'];
    },
  },
  {
    name: 'metadata readable without decoding',
    clause: 'ours',
    defects: ({ catalogue }) =>
      keysOf(get(catalogue, 'Metadata')).includes('Filter') ? ['the metadata stream is filtered'] : [],
  },
  {
    name: 'metadata well formed',
    clause: 'A-3 6.6.2.1',
    defects: (file) => {
      const packet = packetOf(file);
      if (packet === '') return [];
      const isWrapped =
        packet.startsWith('<?xpacket begin="\ufeff"') && packet.trimEnd().endsWith('<?xpacket end="r"?>');
      const isXml = !NO_XML.test(packet) && !/&(?!(lt|gt|amp|quot|apos);)/.test(packet);
      return isWrapped && isXml ? [] : ['the packet is not wrapped, or is no XML'];
    },
  },
  { name: 'metadata equal to the information dictionary', clause: 'A-3 6.1.5', defects: informationDefects },
  {
    name: 'archival claim',
    clause: 'A-3 6.6.4',
    defects: (file) => claimDefects(file, { 'pdfaid:part': '3', 'pdfaid:conformance': 'A' }),
  },
  { name: 'accessibility claim', clause: 'UA-1 5', defects: (file) => claimDefects(file, { 'pdfuaid:part': '1' }) },
  {
    name: 'extension schema',
    clause: 'A-3 6.6.2.3',
    defects: (file) =>
      claimDefects(file, {
        'pdfaSchema:prefix': 'pdfuaid',
        'pdfaSchema:namespaceURI': 'http://www.aiim.org/pdfua/ns/id/',
        'pdfaProperty:name': 'part',
        'pdfaProperty:valueType': 'Integer',
        'pdfaProperty:category': 'internal',
      }),
  },
  {
    name: 'title',
    clause: 'UA-1 7.1',
    defects: (file) => (property(packetOf(file), 'dc:title')?.trim() ? [] : ['dc:title says nothing']),
  },
];
