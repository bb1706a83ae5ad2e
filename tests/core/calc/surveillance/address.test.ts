import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addressForms, isReserved, parseAddress } from '../../../../worker/core/calc/surveillance/address.ts';
import { STATE_BLOCKS } from '../../../../worker/core/calc/surveillance/state-blocks.ts';
import { perhapsStateOf, stateOf, stateOfMarks } from '../../../../worker/core/calc/surveillance/state-of.ts';
import { usAddress, usRegistration } from '../../../../worker/core/calc/surveillance/us-registration.ts';
import { WIDER_BLOCKS } from '../../../../worker/core/calc/surveillance/wider-blocks.ts';
import { RUNS } from '../../../property-runs.ts';
import { fixturesIn, readFixture } from '../../../read-fixture.ts';

const addresses = fc.nat(0xffffff);
const FIRST = 0xa00001;
const LAST = 0xadf7c7;

describe('parseAddress()', () => {
  test('reads back every form of every address', () => {
    fc.assert(
      fc.property(addresses, (address) => {
        const { hexadecimal, octal, binary } = addressForms(address);
        expect([hexadecimal.length, octal.length, binary.length]).toEqual([6, 8, 24]);
        for (const text of [hexadecimal, octal, binary, hexadecimal.toLowerCase(), octal.replace(/(....)/g, '$1 ')])
          expect(parseAddress(text)).toBe(address);
      }),
      RUNS,
    );
  });

  test('refuses what is no address, and every length but three', () => {
    for (const text of [
      '',
      'F00A3',
      'F00A310',
      'G00A31',
      '7400506',
      '74005081',
      '740050611',
      '1'.repeat(23),
      '2'.repeat(24),
    ])
      expect(parseAddress(text), text).toBeUndefined();
  });
});

test('isReserved() holds all zeros and all ones alone', () => {
  fc.assert(
    fc.property(addresses, (address) => {
      expect(isReserved(address)).toBe(address === 0 || address === 0xffffff);
    }),
    RUNS,
  );
});

describe.each([
  ['STATE_BLOCKS', STATE_BLOCKS, stateOf],
  ['WIDER_BLOCKS', WIDER_BLOCKS, perhapsStateOf],
])('%s', (_, blocks, holder) => {
  test('rise without overlap, and their ends belong to them', () => {
    for (const [index, { from, to, state }] of blocks.entries()) {
      expect(from, state).toBeGreaterThan(blocks[index - 1]?.to ?? -1);
      // A block is a power of two, and begins at a multiple of itself.
      expect(Number.isInteger(Math.log2(to - from + 1)) && from % (to - from + 1) === 0, state).toBe(true);
      expect([holder(from), holder(to)]).toEqual([state, state]);
    }
  });
});

test('WIDER_BLOCKS lie round the agreed block of their State and touch no other', () => {
  for (const { from, to, state } of WIDER_BLOCKS) {
    const touched = STATE_BLOCKS.filter((block) => block.from <= to && block.to >= from);
    expect(touched.map((block) => [block.state, from <= block.from && block.to <= to])).toEqual(
      touched.map(() => [state, true]),
    );
    expect(touched.length, state).toBe(STATE_BLOCKS.some((block) => block.state === state) ? 1 : 0);
  }
});

describe('stateOfMarks()', () => {
  test('gives no mark to two States', () => {
    const marks = [...STATE_BLOCKS, ...WIDER_BLOCKS].flatMap((block) => block.marks);
    expect(new Set(marks).size).toBe(marks.length);
  });

  // Rows of the file of prefixes that is named at the table.
  test.each([
    ['D-EQQQ', 'Germany'],
    ['S5-QQQ', 'Slovenia'],
    ['2-QQQQ', 'United Kingdom'],
    ['VP-BQQ', 'United Kingdom'],
    ['N12345', 'United States'],
    ['HL1234', 'South Korea'],
    ['UK12345', 'Uzbekistan'],
    ['CS-QQQ', 'Portugal'],
    ['C-FQQQ', 'Canada'],
    ['B-1234', undefined],
    ['Q-SLM', undefined],
    ['DEABC', undefined],
  ])('%s belongs to %s', (registration, state) => {
    expect(stateOfMarks(registration)).toBe(state);
  });
});

describe('usRegistration()', () => {
  test('gives every address in its range another registration', () => {
    const taken = new Set<string>();
    for (let address = FIRST; address <= LAST; address++) taken.add(usRegistration(address) ?? '');
    expect(taken.size).toBe(LAST - FIRST + 1);
    for (const text of taken)
      expect(/^N[1-9]\d{0,4}$|^N[1-9]\d{0,3}[A-HJ-NP-Z]$|^N[1-9]\d{0,2}[A-HJ-NP-Z]{2}$/.test(text), text).toBe(true);
  });

  test('is undefined outside its range', () => {
    for (const address of [0, FIRST - 1, LAST + 1, 0xffffff]) expect(usRegistration(address)).toBeUndefined();
  });
});

describe('usAddress()', () => {
  test('leads back from every registration', () => {
    for (let address = FIRST; address <= LAST; address++) {
      const back = usAddress(usRegistration(address) ?? '');
      // A matcher for each of a million addresses takes seconds.
      if (back !== address) expect(back).toBe(address);
    }
  });

  test('gives the address of every published pair', () => {
    const pairs = fixturesIn('published')
      .map((name) => readFixture(`published/${name}`) as { topic: string; input: Record<string, string> })
      .filter(({ topic }) => topic === 'us-registration');
    expect(pairs.length).toBeGreaterThan(9);
    for (const { input } of pairs) expect(usAddress(input.registration ?? '')).toBe(parseAddress(input.address ?? ''));
  });

  test('is undefined for what is no such registration', () => {
    for (const text of [
      '',
      'N',
      'N0',
      'N012',
      'N123456',
      'N1234AB',
      'N123ABC',
      'NI1',
      'N1I',
      'N1O',
      'N1AO',
      'N1A1',
      'D-EQQQ',
    ])
      expect(usAddress(text), text).toBeUndefined();
  });
});
