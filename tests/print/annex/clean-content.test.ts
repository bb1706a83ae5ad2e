import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cleanContent } from '../../../worker/print/annex/clean-content.ts';
import { latin1 } from './pdf-of.ts';

const clean = (content: string): string => latin1(cleanContent(Buffer.from(content, 'latin1')).bytes);
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

describe('cleanContent() reports', () => {
  const facts = (content: string) => {
    const { usesCmyk, usesLzw, unknown } = cleanContent(Buffer.from(content));
    return { usesCmyk, usesLzw, unknown: [...unknown] };
  };
  test.each([
    ['0 0 0 1 K', { usesCmyk: true, usesLzw: false, unknown: [] }],
    ['/DeviceCMYK CS 1 0 0 0 SC', { usesCmyk: true, usesLzw: false, unknown: [] }],
    ['BI /CS /G /F /LZW ID x EI', { usesCmyk: false, usesLzw: true, unknown: [] }],
    ['(k) Tj /DeviceCMYK gs', { usesCmyk: false, usesLzw: false, unknown: [] }],
    ['true false null sh what', { usesCmyk: false, usesLzw: false, unknown: ['what'] }],
  ])('%s', (content, expected) => {
    expect(facts(content)).toEqual(expected);
  });
});
