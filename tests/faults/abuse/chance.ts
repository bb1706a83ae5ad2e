import { seededRandom } from '../../core/calc/seeded-random.ts';

/** Choices that are the same on every run of one seed. */
export interface Chance {
  /** Between the bounds, both included. */
  integer(least: number, most: number): number;
  number(least: number, most: number): number;
  oneOf<T>(choices: readonly T[]): T;
  isLucky(probability: number): boolean;
}

export function chanceOf(seed: number): Chance {
  const random = seededRandom(seed);
  const unit = (): number => (random.uniform(1) + 1) / 2;
  const integer = (least: number, most: number): number => least + Math.floor(unit() * (most - least + 1));
  return {
    integer,
    number: (least, most) => least + unit() * (most - least),
    oneOf<T>(choices: readonly T[]): T {
      const choice = choices[integer(0, choices.length - 1)];
      if (choice === undefined && choices.length === 0) throw new RangeError('There must be something to choose from');
      return choice as T;
    },
    isLucky: (probability) => unit() < probability,
  };
}
