import { PDFHexString, PDFName, PDFRawStream, PDFString } from 'pdf-lib';
import type { Check } from '../check.ts';
import { get, keysOf, listOf, nameOf, numberOf, unfollowed } from '../objects.ts';
import type { PdfFile } from '../pdf-file.ts';

const FILTERS = ['FlateDecode', 'DCTDecode', 'ASCIIHexDecode', 'ASCII85Decode', 'RunLengthDecode', 'CCITTFaxDecode'];
const MAX = { stringBytes: 32_767, nameBytes: 127, savedStates: 28, objects: 8_388_607 } as const;

const latin1 = (bytes: Uint8Array): string =>
  Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length).toString('latin1');

const streamsOf = ({ objects }: PdfFile): PDFRawStream[] =>
  objects.filter((object): object is PDFRawStream => object instanceof PDFRawStream);

/** Reads the bytes as they stand, since a forgiving reader mends a wrong length in silence. */
function lengthDefects({ bytes }: PdfFile): string[] {
  const text = latin1(bytes);
  const defects: string[] = [];
  const opening = /(\d+) 0 obj\n(?:(?!endobj|stream)[\s\S])*?\bstream\r?\n/g;
  for (let found = opening.exec(text); found; found = opening.exec(text)) {
    const length = /\/Length (\d+)(?! \d+ R)/.exec(found[0])?.[1];
    const end = opening.lastIndex + Number(length);
    if (length === undefined || !/^\r?\nendstream/.test(text.slice(end, end + 12))) {
      defects.push(`object ${found[1]}: Length ${length ?? 'missing'} is not where endstream stands`);
      continue;
    }
    opening.lastIndex = end;
  }
  return defects;
}

function limitDefects({ objects, pages, context }: PdfFile): string[] {
  const strings = objects.filter((object) => object instanceof PDFHexString || object instanceof PDFString);
  const long = strings.filter((string) => string.asBytes().length > MAX.stringBytes);
  const names = objects.filter((object) => object instanceof PDFName && object.sizeInBytes() > MAX.nameBytes);
  const deep = pages.filter(({ content }) => content.deepest > MAX.savedStates);
  return [
    ...long.map((object) => `a string of ${object.asBytes().length} bytes`),
    ...names.map((object) => `a name of ${object.sizeInBytes()} bytes`),
    ...deep.map(({ content }) => `graphics states saved ${content.deepest} deep`),
    ...(context.largestObjectNumber > MAX.objects ? [`${context.largestObjectNumber} objects`] : []),
  ];
}

export const FILE_CHECKS: readonly Check[] = [
  {
    name: 'header',
    clause: 'A-3 6.1.2',
    defects: ({ bytes }) =>
      /^%PDF-1\.7\r?\n%[\x80-\xff]{4}/.test(latin1(bytes.subarray(0, 20)))
        ? []
        : ['the header does not say 1.7, or no binary comment follows'],
  },
  {
    name: 'file identifier',
    clause: 'A-3 6.1.3',
    defects: ({ context }) => {
      const identifiers = listOf(context.lookup(context.trailerInfo.ID));
      return identifiers.length === 2 ? [] : ['the trailer has no ID of two strings'];
    },
  },
  {
    name: 'not encrypted',
    clause: 'A-3 6.1.3',
    defects: ({ context }) => (context.trailerInfo.Encrypt ? ['the trailer names Encrypt'] : []),
  },
  {
    name: 'nothing after the end',
    clause: 'A-3 6.1.3',
    defects: ({ bytes }) => (/%%EOF\r?\n?$/.test(latin1(bytes.subarray(-16))) ? [] : ['data follow %%EOF']),
  },
  { name: 'stream lengths', clause: 'A-3 6.1.7.1', defects: lengthDefects },
  {
    name: 'streams within the file',
    clause: 'A-3 6.1.7.1',
    defects: (file) =>
      streamsOf(file).flatMap((stream) =>
        keysOf(stream)
          .filter((key) => ['F', 'FFilter', 'FDecodeParms'].includes(key))
          .map((key) => `a stream has ${key}`),
      ),
  },
  {
    name: 'stream filters',
    clause: 'A-3 6.1.7.2',
    defects: (file) =>
      streamsOf(file)
        .flatMap((stream) => unfollowed(get(stream, 'Filter')).map((filter) => nameOf(filter) ?? ''))
        .filter((filter) => !FILTERS.includes(filter))
        .map((filter) => `a stream is filtered by ${filter}`),
  },
  { name: 'limits', clause: 'A-3 6.1.13', defects: limitDefects },
  {
    name: 'page size',
    clause: 'A-3 6.1.13',
    defects: ({ pages }) =>
      pages.flatMap(({ dict }, page) => {
        const [left, bottom, right, top] = listOf(get(dict, 'MediaBox')).map((side) => numberOf(side) ?? 0);
        const sides = [Number(right) - Number(left), Number(top) - Number(bottom)];
        return sides.every((side) => side >= 3 && side <= 14_400)
          ? []
          : [`page ${page + 1} measures ${sides.join(' × ')}`];
      }),
  },
];
