import type { Source } from '../source.ts';

/** A value of a regime, with what it is measured in and where it comes from. */
export interface Sourced<Value> {
  value: Value;
  unit: string;
  source: Source;
}

/** A sentence that a releasing person may sign. */
export interface Statement {
  id: string;
  title: string;
  /** What is released by it: the work of the visit, or its weighing and nothing else. */
  covers: 'work' | 'weighing';
  text: string;
  source: Source;
}

/**
 * A set of rules that an aircraft is kept under, as data: no code asks for a regime by name. A null value means that the
 * regime has no such rule, never that it is unknown.
 */
export interface Regime {
  id: string;
  title: string;
  /** Date of this edition of the values; printed in every pack. */
  version: string;
  statements: readonly Statement[];
  /** Classes of modification that need an approval reference. */
  approvalNeeded: Sourced<readonly string[]>;
  /** Whether critical tasks need a second person. */
  secondInspection: Sourced<boolean>;
  reweighYears: Sourced<number | null>;
  reweighChangeShare: Sourced<number | null>;
  negligibleMassKg: Sourced<number | null>;
  negligibleMacPercent: Sourced<number | null>;
  predictionToleranceKg: Sourced<number>;
  predictionToleranceMm: Sourced<number>;
  leftRightShare: Sourced<number>;
  runsDisagreeShare: Sourced<number>;
  levelToleranceDeg: Sourced<number>;
  leastPilotKg: Sourced<number>;
  standardPersonKg: Sourced<number>;
  soloMassHighKg: Sourced<number>;
  minimumPayload: Sourced<{ perSeatKg: number; fuelHours: number } | null>;
  /** How often a finding may be carried forward before it draws a caution. */
  deferralsCarried: Sourced<number>;
}
