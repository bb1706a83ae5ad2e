import { PDFDocument, PDFName, PDFRawStream } from 'pdf-lib';
import { describe, expect, test } from 'vitest';
import { type PrintAttachment, print } from '../../../../worker/core/print/index.ts';
import { jobOf } from '../sample-job.ts';

const plain = (content: string): PrintAttachment => ({
  name: 'seal.jws',
  bytes: new TextEncoder().encode(content),
  mediaType: 'application/jose',
  description: 'Stays as it is',
  relationship: 'Supplement',
  isPlain: true,
});

const other: PrintAttachment = { ...plain('{"a":1}'), name: 'record.json', isPlain: false };

async function printed(content: string) {
  return print(jobOf('<p>Text</p>', { attachments: [plain(content), other] }));
}

describe('print() with an attachment that is stored as it is', () => {
  test('says where it stands', async () => {
    const { bytes, plain: places, parts } = await printed('content to be written over');
    expect(places.map(({ name }) => name)).toEqual(['seal.jws']);
    const [place] = places;
    expect(Buffer.from(bytes.subarray(place?.start, place?.end)).toString()).toBe('content to be written over');
    expect(parts.map(({ name }) => name)).toEqual(['page 1', 'record.json']);
    for (const { start, end } of parts) {
      expect(Buffer.from(bytes.subarray(start, start + 30)).toString('latin1')).toMatch(/^\d+ 0 obj\n/);
      expect(Buffer.from(bytes.subarray(end - 10, end + 6)).toString('latin1')).toBe('endstream\nendobj');
    }
  });

  // The table is deflated, and deflated data begin with an x: what begins so is told from them only where the table is not.
  test.each(['content', 'x', 'x\u0001'])('has nothing after it that begins as it does: %j', async (content) => {
    const { bytes, plain: places } = await printed(content);
    const after = Buffer.from(bytes).subarray(places[0]?.end).toString('latin1');
    expect(after).not.toContain(`stream\n${content}`);
    expect(after.match(/ 0 obj/g)).toHaveLength(1);
    const file = await PDFDocument.load(bytes, { updateMetadata: false });
    expect(file.getPageCount()).toBe(1);
    const streams = file.context.enumerateIndirectObjects().map(([, object]) => object);
    const attached = streams.filter(
      (object) => object instanceof PDFRawStream && object.dict.get(PDFName.of('Type')) === PDFName.of('EmbeddedFile'),
    );
    expect(attached).toHaveLength(2);
  });
});
