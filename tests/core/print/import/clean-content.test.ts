import { deflateSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cleanContent } from '../../../../worker/core/print/import/clean-content.ts';
import { budgetOf } from '../budget-of.ts';
import { latin1 } from './pdf-of.ts';

const clean = (content: string): string => latin1(cleanContent(Buffer.from(content, 'latin1'), budgetOf({})).bytes);
const words = (content: string): string[] => content.split(/\s+/).filter((word) => word !== '');

const MARKS = [
  'BMC',
  '/Span BMC',
  '/P <</MCID 0>> BDC',
  '/P<</MCID 3/ActualText(a\\)EMC BT)>>BDC',
  '/P <</E <feff0045> /L [(x) /N 1 true]>> BDC',
  '/OC /MC0 BDC',
  'EMC',
  '/T MP',
  '/T <</A<</B[1 2]>>>> DP',
];

// Each holds something that could be taken for a mark.
const OTHERS = [
  'q',
  '1 0 0 1 -5.5 .3 cm',
  '(EMC) Tj',
  '(a (BMC) \\) b) Tj',
  '[(BDC)-120<454d43>(\\\\)] TJ',
  '/EMC Do',
  '/BMC gs',
  '% /P BMC is no mark here\nS',
  'BI /W 4 /H 1 /BPC 8 /CS /G ID EMC  EI',
  'BI /W 9 /H 1 /BPC 8 /CS /G ID (EMC\u0001\u00ff EI\u0002\u0003 BMC\nEI',
  "(next) '",
  '1 2 (next) "',
  'T*',
  '0 0 10 10 re f*',
];

test('cleanContent() removes marks and changes no other operator', () => {
  const part = fc.oneof(fc.constantFrom(...MARKS), fc.constantFrom(...OTHERS));
  const space = fc.constantFrom(' ', '\n', '\r\n', ' % a comment (BMC\n');
  fc.assert(
    fc.property(fc.array(fc.tuple(part, space), { maxLength: 30 }), (parts) => {
      const kept = parts.filter(([operator]) => !MARKS.includes(operator));
      const joined = (list: typeof parts): string => list.map(([operator, between]) => operator + between).join('');
      const withoutComments = (text: string): string => text.replaceAll(' % a comment (BMC\n', '\n');
      expect(words(withoutComments(clean(joined(parts))))).toEqual(words(withoutComments(joined(kept))));
    }),
  );
});

test('cleanContent() leaves content without marks byte for byte, whatever it is', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
      const text = latin1(bytes);
      fc.pre(!/BMC|BDC|EMC|MP|DP/.test(text));
      expect(clean(text)).toBe(text);
    }),
  );
});

test('cleanContent() finds nothing more to remove in what it has cleaned', () => {
  const anything = fc.array(
    fc.constantFrom(...MARKS, ...OTHERS, '(', ')', '<<', '>>', '[', ']', '<', '>', '\\', 'ID', 'EI', 'BI', '%'),
  );
  fc.assert(
    fc.property(anything, (parts) => {
      const once = clean(parts.join(' '));
      expect(clean(once)).toBe(once);
    }),
  );
});

describe('cleanContent() goes through pictures within a page', () => {
  const packed = (bytes: Uint8Array): string => latin1(deflateSync(bytes, { level: 9 }));
  const picture = (entries: string, samples: string): string => `q BI ${entries} ID ${samples}\nEI Q`;
  const GREY = '/CS /G /BPC 8';

  test.each([
    ['of no filter', picture(`/W 3 /H 1 ${GREY}`, 'abc')],
    ['deflated', picture(`/W 30 /H 20 ${GREY} /F /Fl`, packed(new Uint8Array(600)))],
    [
      'deflated, as digits',
      picture(`/W 30 /H 20 ${GREY} /F [/AHx /Fl]`, `${deflateSync(new Uint8Array(600)).toString('hex')}>`),
    ],
    ['a mask of bits', picture('/W 30 /H 20 /IM true /F /Fl', packed(new Uint8Array(80)))],
    ['by fax', picture('/W 30 /H 20 /IM true /F /CCF /DP <</K -1 /Columns 30>>', '\u0000\u0001')],
    [
      'in full words',
      picture(
        '/Width 30/Height 20/ColorSpace/DeviceGray/BitsPerComponent 8/Filter/FlateDecode',
        packed(new Uint8Array(600)),
      ),
    ],
  ])('and leaves one %s as it is', (_, content) => {
    expect(clean(content)).toBe(content);
  });

  test.each([
    ['unpacks to more than its size', picture(`/W 3 /H 2 ${GREY} /F /Fl`, packed(new Uint8Array(100_000))), 'its size'],
    [
      'unpacks to more than its size, as a mask',
      picture('/W 3 /H 2 /IM true /F /Fl', packed(new Uint8Array(100_000))),
      'its size',
    ],
    ['unpacks to more than its size, of no size', picture(`${GREY} /F /Fl`, packed(new Uint8Array(1000))), 'its size'],
    ['has too many pixels', picture(`/W 30000 /H 30000 ${GREY}`, 'x'), '40 million'],
    [
      'is a fax that may have too many',
      picture('/W 9 /H 9 /IM true /F /CCF /DP <</K -1 /Columns 90000000>>', 'x'),
      '40 million',
    ],
    ['is a photograph that is none', picture('/W 9 /H 9 /CS /RGB /BPC 8 /F /DCT', 'rubbish'), 'no JPEG'],
    ['is a photograph in disguise', picture('/W 9 /H 9 /CS /RGB /BPC 8 /F [/AHx /DCT]', 'ffd8>'), 'packed twice over'],
    ['is packed in a way that is not known', picture('/W 9 /H 9 /F /JPXDecode', 'x'), 'not known: JPXDecode'],
  ])('and refuses one that %s', (_, content, words) => {
    expect(() => clean(content)).toThrow(words);
  });

  test('and counts their pixels', () => {
    const content = picture(`/W 3 /H 1 ${GREY}`, 'abc');
    expect(cleanContent(Buffer.from(`${content} ${content}`), budgetOf({})).pixels).toBe(6);
  });
});

describe('cleanContent() reports', () => {
  const facts = (content: string) => {
    const { usesCmyk, usesLzw, usesUnknown } = cleanContent(Buffer.from(content), budgetOf({}));
    return { usesCmyk, usesLzw, usesUnknown };
  };
  test.each([
    ['0 0 0 1 K', { usesCmyk: true, usesLzw: false, usesUnknown: false }],
    ['/DeviceCMYK CS 1 0 0 0 SC', { usesCmyk: true, usesLzw: false, usesUnknown: false }],
    ['BI /CS /G /F /LZW ID x EI', { usesCmyk: false, usesLzw: true, usesUnknown: false }],
    ['(k) Tj /DeviceCMYK gs', { usesCmyk: false, usesLzw: false, usesUnknown: false }],
    ['true false null sh what', { usesCmyk: false, usesLzw: false, usesUnknown: true }],
  ])('%s', (content, expected) => {
    expect(facts(content)).toEqual(expected);
  });
});
