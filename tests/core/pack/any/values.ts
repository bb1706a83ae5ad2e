import fc from 'fast-check';

/** Words as people write them into records, from none that can be broken to many. */
const WORDS = [
  'W'.repeat(60),
  'Donaudampfschifffahrtsgesellschaft',
  'rear-left-hand-locker-behind-the-bulkhead',
  'Ü ß é „quoted“ 1/2 × 3',
  'i l i l i l i l i l',
  'Baggage compartment behind the rear seats, starboard side',
] as const;

export const longText = (length: number): fc.Arbitrary<string> =>
  fc.array(fc.constantFrom(...WORDS), { minLength: 1, maxLength: 8 }).map((words) =>
    words
      .join(' ')
      .repeat(Math.ceil(length / 10))
      .slice(0, length)
      .trim(),
  );

/** A name of any length that the schema allows, the longest as often as any other. */
export const name = (most: number): fc.Arbitrary<string> =>
  fc.oneof(
    fc.constantFrom('Left seat', 'Rear tank', 'A'),
    longText(most),
    fc.integer({ min: 1, max: most }).chain(longText),
  );

export const tenths = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: Math.round(min * 10), max: Math.round(max * 10) }).map((value) => value / 10);

/** Mostly as on a light aircraft, now and then with as many digits as anybody could type. */
export const mass = (max: number): fc.Arbitrary<number> =>
  fc.oneof({ weight: 8, arbitrary: tenths(1, max) }, { weight: 1, arbitrary: tenths(1, 999_999_999) });

/** The same, or nothing. */
export const massOrNone = (max: number): fc.Arbitrary<number> =>
  fc.oneof({ weight: 6, arbitrary: mass(max) }, { weight: 1, arbitrary: fc.constant(0) });

export const arm: fc.Arbitrary<number> = fc.oneof(
  { weight: 8, arbitrary: tenths(-300, 6000) },
  { weight: 1, arbitrary: tenths(-199_999_999, 199_999_999) },
);

/** Offset from the centre line: most things lie near it. */
export const lateralArm: fc.Arbitrary<number> = fc.oneof(
  { weight: 3, arbitrary: fc.constant(0) },
  { weight: 8, arbitrary: tenths(-1200, 1200) },
  { weight: 1, arbitrary: tenths(-199_999_999, 199_999_999) },
);

/** Present every other time. */
export const optional = <Value>(value: fc.Arbitrary<Value>): fc.Arbitrary<Value | undefined> =>
  fc.option(value, { nil: undefined, freq: 2 });

/** Present every fifth time. */
export const rare = <Value>(value: fc.Arbitrary<Value>): fc.Arbitrary<Value | undefined> =>
  fc.oneof({ weight: 4, arbitrary: fc.constant(undefined) }, { weight: 1, arbitrary: value });

/** From 0 to 1: which part of a list that is not known yet. */
export const share: fc.Arbitrary<number> = fc.integer({ min: 0, max: 1000 }).map((value) => value / 1000);

/** Entries of a list by a number whose bits choose them; at least one, if the list has any. */
export function chosen<Of>(list: readonly Of[], bits: number, most: number = list.length): Of[] {
  const some = list.filter((_, index) => ((bits >>> (index % 31)) & 1) === 1).slice(0, most);
  return some.length > 0 ? some : list.slice(0, 1);
}

export const bits: fc.Arbitrary<number> = fc.integer({ min: 0, max: 2 ** 31 - 1 });

/** An object without the members that are undefined, as JSON has it. */
export const defined = <Of extends object>(values: Of): Of =>
  Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as Of;
