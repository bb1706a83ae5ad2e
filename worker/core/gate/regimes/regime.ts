import type { Message, Value } from '../../text/message.ts';
import type { Source } from '../source.ts';

/** Value of a regime, with its unit and source. */
export interface Sourced<Value> {
  value: Value;
  unit: string;
  source: Source;
}

/** What a statement is about. */
export type Coverage = 'work' | 'inspection' | 'weighing';

/** What fills the wording of a statement: the kind of the inspection. */
export interface StatementValues {
  inspection: Value;
}

/** A sentence that a releasing person may sign. */
export interface Statement {
  id: string;
  title: Message;
  /** All that it covers. */
  covers: readonly Coverage[];
  /** The sentence above the signature, in the language of the record. */
  wording: Message<StatementValues>;
  /** The words of the rule, if they were read: printed after the sentence, as they are. */
  ruleWording?: string;
  source: Source;
}

/**
 * Values of the rules that apply to an aircraft. No code depends on the name of a regime. A null value means that the
 * regime has no such rule, never that the value is unknown.
 */
export interface Regime {
  id: string;
  title: Message;
  /** Date of this edition of the values; printed in every pack. */
  version: string;
  statements: readonly Statement[];
  /** Classes of modification that need an approval reference. */
  approvalNeeded: Sourced<readonly string[]>;
  /** Whether critical tasks need a second person. */
  secondInspection: Sourced<boolean>;
  reweighYears: Sourced<number | null>;
  reweighChangeShare: Sourced<number | null>;
  /** Shift of the empty centre of gravity since the weighing, in per cent of the chord. */
  reweighMacPercent: Sourced<number | null>;
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
  /** Largest maximum mass that the regime covers; for rotorcraft and on water if it differs. */
  massCapKg: Sourced<number | null>;
  massCapRotorcraftKg: Sourced<number | null>;
  massCapWaterKg: Sourced<number | null>;
  /** How often a finding may be carried forward without a caution. */
  deferralsCarried: Sourced<number>;
  /** Longest time from the first deferral of a finding to its limit, without a caution. */
  deferralDaysLongest: Sourced<number>;
  /** Days between the search for bulletins and the release, without a caution. */
  bulletinSearchDays: Sourced<number>;
  /** Days between the end of work and the release, without a caution. */
  releaseDays: Sourced<number>;
}

/** Name of a value of a regime. */
export type RegimeValue = {
  [Name in keyof Regime]: Regime[Name] extends Sourced<unknown> ? Name : never;
}[keyof Regime];

/** Whether a statement is about nothing else. */
export function isOnlyOf({ covers }: Statement, coverage: Coverage): boolean {
  return covers.every((each) => each === coverage);
}
