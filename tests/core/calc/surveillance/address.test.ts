import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addressForms, isReserved, parseAddress } from '../../../../worker/core/calc/surveillance/address.ts';
import { STATE_BLOCKS, stateOf } from '../../../../worker/core/calc/surveillance/state-blocks.ts';
import { usRegistration } from '../../../../worker/core/calc/surveillance/us-registration.ts';
import { RUNS } from '../../../property-runs.ts';

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

test('STATE_BLOCKS rise without overlap, and their ends belong to them', () => {
  for (const [index, { from, to, state }] of STATE_BLOCKS.entries()) {
    expect(from, state).toBeLessThan(to);
    expect(from, state).toBeGreaterThan(STATE_BLOCKS[index - 1]?.to ?? -1);
    // A block is a power of two, and begins at a multiple of itself.
    expect(Number.isInteger(Math.log2(to - from + 1)) && from % (to - from + 1) === 0, state).toBe(true);
    expect([stateOf(from), stateOf(to)]).toEqual([state, state]);
  }
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
