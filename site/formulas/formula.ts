// The page runs the code: sources come from `@source`, results from calling the functions, and a test recalculates
// every line like a pocket calculator. temml writes MathML at build, without styles because of the content policy. A
// subset of Noto Sans Math (17 kB) draws it: many phones have no face whose radicals and brackets can grow.

/** Number with its unit, as an example states it; the unit is empty for a bare number. */
export type Quantity = readonly [value: number, unit: string];

/** Line of an example that can be checked with a pocket calculator. */
export interface Sum {
  /** `lhs = rhs` in TeX, in the symbols of the example; the page inserts the numbers. */
  tex: string;
  /** Value of the left-hand side, computed by the code. */
  result: number;
  unit: string;
  /** Quantity of the published case that the result must match. */
  expected?: string;
}

/** Line of an example in words, for a table lookup, a comparison or a count. */
export interface Said {
  say: string;
  /** Computed values of quantities of the published case. */
  results?: Readonly<Record<string, number>>;
}

/** Formula with numbers; every result is computed by the code. */
export interface Example {
  /** Case of `fixtures/published/` that provides the numbers. */
  case?: string;
  /** Values by symbol; `m_1`, `m_2` … for a symbol `m_i`. */
  given: Readonly<Record<string, Quantity>>;
  steps: readonly (Sum | Said)[];
}

/** Symbol in TeX, its meaning, and its unit in the code; the unit is empty for a bare number. */
export type Meaning = readonly [symbol: string, meaning: string, unit: string];

/** Function of `worker/core/calc` or `worker/core/units` that computes a formula. */
export type Computing = (...given: never[]) => unknown;

export interface Formula {
  /** Anchor on the page. */
  id: string;
  title: string;
  /** One line or several, in TeX. */
  tex: readonly string[];
  symbols: readonly Meaning[];
  /** Functions that compute it; their comments state their sources. */
  by: readonly Computing[];
  /** Conditions under which it is valid, and what it leaves out. */
  holds: string;
  example: () => Example;
}

/** Group of related formulas. */
export interface Topic {
  id: string;
  title: string;
  formulas: readonly Formula[];
}
