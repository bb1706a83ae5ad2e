// The page runs the code: sources come from `@source`, results from calling the functions, and a test recalculates
// every line like a pocket calculator. temml writes MathML at build, without styles because of the content policy. A
// subset of Noto Sans Math (17 kB) draws it: many phones have no face whose radicals and brackets can grow.

/** A number with its unit, as an example states it; the unit is empty for a bare number. */
export type Quantity = readonly [value: number, unit: string];

/** A line of an example that a pocket calculator can follow. */
export interface Sum {
  /** `lhs = rhs` in TeX, in the symbols of the example; the page puts the numbers in. */
  tex: string;
  /** What the code gives for the left-hand side. */
  result: number;
  unit: string;
  /** The quantity of the published case that it is to agree with. */
  expected?: string;
}

/** A line of an example in words, where the code looks something up, compares or counts. */
export interface Said {
  say: string;
  /** What the code gives for quantities of the published case. */
  results?: Readonly<Record<string, number>>;
}

/** A formula with numbers in it; every result comes from the code. */
export interface Example {
  /** The case of `fixtures/published/` that the numbers are taken from. */
  case?: string;
  /** Values by symbol; `m_1`, `m_2` … for a symbol `m_i`. */
  given: Readonly<Record<string, Quantity>>;
  steps: readonly (Sum | Said)[];
}

/** A symbol in TeX, what it means, and the unit that the code has it in; the unit is empty for a bare number. */
export type Meaning = readonly [symbol: string, meaning: string, unit: string];

/** A function of `worker/calc` or `worker/core/units` that computes a formula. */
export type Computing = (...given: never[]) => unknown;

export interface Formula {
  /** Its anchor on the page. */
  id: string;
  title: string;
  /** One line or several, in TeX. */
  tex: readonly string[];
  symbols: readonly Meaning[];
  /** Functions that compute it; their sources are read from their own comments. */
  by: readonly Computing[];
  /** When it holds, and what it leaves out. */
  holds: string;
  example: () => Example;
}

/** Formulas that belong together. */
export interface Topic {
  id: string;
  title: string;
  formulas: readonly Formula[];
}
