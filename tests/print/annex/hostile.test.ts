import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inspectAttachment } from '../../../worker/print/index.ts';
import { attachment } from './pdf-of.ts';

const FILES = [
  'release-certificate.pdf',
  'data-sheet-font-not-embedded.pdf',
  'scripted.pdf',
  'encrypted.pdf',
  'truncated.pdf',
  'loom-on-its-side.jpg',
  'connector-with-alpha.png',
].map(attachment);

interface Change {
  at: number;
  /** Null replaces as much as is inserted. */
  remove: number | null;
  insert: Uint8Array;
}

// Many changes keep the length, or the table of objects would lead nowhere and nothing else be reached. Places are shares of the length, so that one change fits every file; most are small, where structure is hit.
const change = fc.record({
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  remove: fc.oneof({ weight: 4, arbitrary: fc.constant(null) }, fc.nat(4), fc.nat(3000)),
  insert: fc.oneof(
    fc.uint8Array({ maxLength: 4 }),
    fc
      .constantFrom(
        '1 0 R',
        '<<',
        '>>',
        '[',
        '(',
        '/Prev 9',
        '/Length 999999999',
        'stream\n',
        'xref',
        '-1',
        '0 0 obj',
        '/Kids[2 0 R]',
      )
      .map((text) => new Uint8Array(Buffer.from(text))),
  ),
});

function changed(bytes: Uint8Array, changes: readonly Change[]): Uint8Array {
  return changes.reduce<Uint8Array>((now, { at, remove, insert }) => {
    const start = Math.floor(at * now.length);
    return new Uint8Array(
      Buffer.concat([now.subarray(0, start), insert, now.subarray(start + (remove ?? insert.length))]),
    );
  }, bytes);
}

test('inspectAttachment() gives a verdict on any file, and throws never', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.constantFrom(...FILES),
      fc.array(change, { minLength: 1, maxLength: 4 }),
      async (file, changes) => {
        const inspected = await inspectAttachment(changed(file, changes));
        if (!inspected.ok) expect(inspected.detail).not.toBe('');
      },
    ),
    { numRuns: 1500 },
  );
});

test('inspectAttachment() gives a verdict on any bytes behind a header', async () => {
  const header = fc
    .constantFrom('%PDF-1.7\n', '\u0089PNG\r\n\u001a\n', '\u00ff\u00d8\u00ff')
    .map((text) => Buffer.from(text, 'latin1'));
  await fc.assert(
    fc.asyncProperty(header, fc.uint8Array({ maxLength: 400 }), async (start, rest) => {
      expect(await inspectAttachment(new Uint8Array(Buffer.concat([start, rest])))).toMatchObject({ ok: false });
    }),
  );
});
