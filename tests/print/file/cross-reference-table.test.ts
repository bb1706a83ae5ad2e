import fc from 'fast-check';
import { PDFContext, PDFCrossRefStream, PDFRef } from 'pdf-lib';
import { expect, test } from 'vitest';
import {
  crossReferenceTable,
  rowAt,
  rowWithin,
  type TableRow,
} from '../../../worker/print/file/cross-reference-table.ts';

const anyRow = fc.oneof(
  fc.nat({ max: 0x7fff_ffff }).map((offset) => rowAt(offset)),
  fc.tuple(fc.nat({ max: 70_000 }), fc.nat({ max: 399 })).map(([stream, index]) => rowWithin(stream, index)),
);
const anyRows = fc.uniqueArray(fc.tuple(fc.integer({ min: 1, max: 300 }), anyRow), { selector: ([number]) => number });

/** The table as another library writes it. */
function reference(rows: readonly (readonly [number, TableRow])[]): { contents: Uint8Array; dictionary: string } {
  const table = PDFCrossRefStream.create(PDFContext.create().obj({}), false);
  for (const [number, [type, second, third]] of [...rows].sort(([one], [other]) => one - other)) {
    if (type === 1) table.addUncompressedEntry(PDFRef.of(number), second);
    else table.addCompressedEntry(PDFRef.of(number), PDFRef.of(second), third);
  }
  table.updateDict();
  return { contents: table.getUnencodedContents(), dictionary: table.dict.toString() };
}

test('crossReferenceTable() gives the bytes that pdf-lib gives, in whatever order the rows come', () => {
  fc.assert(
    fc.property(anyRows, (rows) => {
      const { contents, entries } = crossReferenceTable(new Map(rows));
      const expected = reference(rows);
      expect(contents).toEqual(expected.contents);
      expect(expected.dictionary).toContain(`/W ${entries.W}\n/Index ${entries.Index}\n`);
    }),
  );
});
