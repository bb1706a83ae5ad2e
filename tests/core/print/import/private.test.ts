import { describe, expect, test } from 'vitest';
import { inspectAttachment, type PrintJob, print } from '../../../../worker/core/print/index.ts';
import { jobOf } from '../sample-job.ts';
import { HOSTILE_FILES, PHOTOGRAPH, PHOTOGRAPH_SIZE, showing, withSegment } from './hostile-files.ts';
import { latin1, onePage, streamOf } from './pdf-of.ts';
import { readFile, type WrittenFile } from './read-file.ts';

// What the camera wrote: its maker, its clock, and a position.
const PRIVATE = /Exif|Example Camera|2026:11:03|hangar|GPS/;

function jobWith(bytes: Uint8Array): PrintJob {
  const html = '<article id="annex" lang="en"><h1>Annex</h1></article>';
  return jobOf('', { documents: [{ id: 'annex', title: 'Annex', html, appended: { bytes, title: 'Paper' } }] });
}

/** Everything that a written file says, unpacked. */
async function everythingIn(bytes: Uint8Array): Promise<{ file: WrittenFile; text: string }> {
  const file = await readFile(bytes);
  const streams = [...file.streams('Form'), ...file.streams('Image')];
  const samples = streams.map(
    (stream) => latin1(stream.bytes) + (/DCT/.test(stream.dictionary) ? '' : stream.decode()),
  );
  const text = [
    latin1(bytes),
    ...file.contents,
    ...file.objects,
    ...samples,
    ...streams.map(({ dictionary }) => dictionary),
  ];
  return { file, text: text.join('\n') };
}

async function printed(bytes: Uint8Array) {
  expect(await inspectAttachment(bytes)).toMatchObject({ ok: true });
  return everythingIn((await print(jobWith(bytes))).bytes);
}

describe('print() takes over a photograph within a paper', () => {
  test.each([
    'a photograph with its place',
    'a photograph with its place, packed again',
    'a photograph with its place, within a page',
  ])('without place, time and camera: %s', async (name) => {
    const { text } = await printed(HOSTILE_FILES[name]?.() ?? new Uint8Array());
    expect(latin1(PHOTOGRAPH)).toMatch(PRIVATE);
    expect(text).not.toMatch(PRIVATE);
    // The coded samples are all there: from the scan to the end, and the tables before it.
    const jpeg = latin1(PHOTOGRAPH);
    expect(text).toContain(jpeg.slice(jpeg.lastIndexOf('\u00ff\u00da'), jpeg.lastIndexOf('\u00ff\u00d9') + 2));
  });

  test.each([
    ['XMP', 0xe1, 'http://ns.adobe.com/xap/1.0/\0<x:xmpmeta>hangar 4</x:xmpmeta>'],
    ['a comment', 0xfe, 'Taken in hangar 4'],
    ['data of its maker', 0xed, 'Photoshop 3.0\0hangar 4'],
    ['a small picture of it', 0xe0, 'JFXX\0hangar 4'],
    ['a segment that is reserved', 0xf7, 'hangar 4'],
  ])('without %s', async (_, marker, body) => {
    const jpeg = latin1(withSegment(PHOTOGRAPH, marker, Buffer.from(body, 'latin1')));
    const { file, text } = await printed(
      showing(`${PHOTOGRAPH_SIZE}/ColorSpace/DeviceRGB/BitsPerComponent 8/Filter/DCTDecode`, jpeg),
    );
    expect(text).not.toMatch(PRIVATE);
    expect(file.streams('Image')).toHaveLength(1);
  });

  test('that has no end, as careless writers leave it', async () => {
    const open = latin1(PHOTOGRAPH.subarray(0, PHOTOGRAPH.length - 2));
    const entries = `${PHOTOGRAPH_SIZE}/ColorSpace/DeviceRGB/BitsPerComponent 8/Filter/DCTDecode`;
    const { file } = await printed(showing(entries, open));
    expect(latin1(file.streams('Image')[0]?.bytes ?? new Uint8Array()).endsWith('\u00ff\u00d9')).toBe(true);
  });
});

test('print() leaves behind whatever speaks of a paper rather than shows it', async () => {
  const secret = (name: string): string => streamOf(`Somebody in hangar 4, ${name}`, '/Type/Metadata/Subtype/XML');
  const spoken =
    '/Metadata 6 0 R/PieceInfo<</Writer<</Private(hangar 4)>>>>/LastModified(hangar 4)/Thumb 7 0 R/AF[8 0 R]';
  const font = `<</Type/Font/Subtype/TrueType/BaseFont/Face/Encoding/WinAnsiEncoding/FontDescriptor 11 0 R${spoken}>>`;
  const { text } = await printed(
    onePage({
      catalogue: `/Metadata 6 0 R${spoken.slice('/Metadata 6 0 R'.length)}`,
      page: spoken,
      content: '/I Do /F Do /G gs BT /F2 9 Tf (Shown) Tj ET',
      resources: '/XObject<</I 9 0 R/F 10 0 R>>/ExtGState<</G 13 0 R>>/ColorSpace<</C[/ICCBased 14 0 R]>>',
      fonts: '/F2 12 0 R',
      objects: [
        secret('as metadata'),
        streamOf(
          'Somebody in hangar 4, small',
          '/Subtype/Image/Width 1/Height 27/ColorSpace/DeviceGray/BitsPerComponent 8',
        ),
        '<</Type/Filespec/F(hangar 4)/Desc(hangar 4)>>',
        streamOf('x', `/Type/XObject/Subtype/Image/Width 1/Height 1/ColorSpace/DeviceGray/BitsPerComponent 8${spoken}`),
        streamOf('0 0 1 1 re f', `/Type/XObject/Subtype/Form/BBox[0 0 9 9]${spoken}`),
        `<</Type/FontDescriptor/FontName/Face/Flags 32/FontFile2 15 0 R${spoken}>>`,
        font,
        `<</Type/ExtGState/LW 2${spoken}>>`,
        streamOf('profile', `/N 3${spoken}`),
        streamOf('program', `/Length1 7${spoken}`),
      ],
    }),
  );
  expect(text).toContain('Shown');
  expect(text).not.toMatch(/hangar 4|PieceInfo|LastModified|Thumb/);
});
