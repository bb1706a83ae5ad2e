import type { OpenItem } from '../calc/open-items/open-item.ts';
import type { Readings } from '../calc/open-items/readings.ts';
import { type OpenDue, timeLeft } from '../calc/open-items/time-left.ts';
import type { AircraftClass } from '../record/class.ts';
import { classDataOf } from '../record/classes/index.ts';
import { readRecord } from '../record/read-record.ts';
import type { StandingProof } from '../record/standing.ts';
import type { StandingFile } from '../record/standing-file.ts';
import { SCHEMA_VERSION } from '../record/upgrades.ts';

/** Beginning of a record, and what it still lacks to be one. */
export interface Beginning {
  /** Plain JSON: a record in the present version once it has what it lacks. */
  record: Record<string, unknown>;
  lacks: { pointer: string; remedy: string }[];
}

/** Beginning of the record of the next visit, with what it need not repeat. */
export interface NextRecord extends Beginning {
  pack: string;
  sections: StandingFile['sections'];
  /** Open items, the first due at the top. */
  open: OpenDue[];
  readings: Readings;
}

/**
 * Returns the beginning of the record of the next visit, which names the standing file.
 *
 * @param at time from which the time left of open items is counted
 * @param proof sealed files, if the next visit is at another workshop: the letterhead is then left out
 */
export function nextRecord(file: StandingFile, at: string, proof?: StandingProof): NextRecord {
  const { pack, sha256, open } = file;
  const { workshop: _, ...travelling } = file.sections;
  const sections = proof ? travelling : file.sections;
  const readings = file.readings as Readings;
  const standing = { pack, sha256, ...(proof && { proof }) };
  return {
    pack,
    ...beginning({ schemaVersion: SCHEMA_VERSION, standing }, { ...file, sections }),
    sections,
    open: timeLeft(open as readonly OpenItem[], readings, at),
    readings,
  };
}

/** What an aircraft of a class can have and needs, from its data. */
export type ClassHints = Pick<ReturnType<typeof classDataOf>, 'products' | 'axes' | 'requires'>;

/**
 * Returns the beginning of the first record of an aircraft, and what its class implies. Figures of a type are
 * never in it: they come from its documents.
 */
export function firstRecord(registration: string, of: AircraftClass = 'three-axis'): Beginning & { hints: ClassHints } {
  const { products, axes, requires } = classDataOf({ class: of });
  const record = {
    schemaVersion: SCHEMA_VERSION,
    units: { mass: 'kg', arm: 'mm', volume: 'l' },
    aircraft: { registration, class: of, regime: 'generic' },
  };
  return { ...beginning(record), hints: { products, axes, requires } };
}

function beginning(record: Record<string, unknown>, standing?: StandingFile): Beginning {
  const read = readRecord(record, { standing });
  const issues = read.ok ? [] : read.issues;
  const lacks = issues.map(({ pointer: at, remedy }) => ({ pointer: at, remedy }));
  return { record, lacks };
}
