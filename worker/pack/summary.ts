import type { ReleasedVisit } from '../gate/release.ts';
import type { PackContext } from './context.ts';
import type { PackIdentity } from './identity.ts';

/** What lists and the owner's page show of a pack without opening it. */
export interface PackSummary {
  registration: string;
  pack: string;
  number: number;
  issue: number;
  visit: string;
  issuedAt: string;
  releasedBy: string;
  regime: string;
  emptyMassKg: number | null;
  emptyArmMm: number | null;
  supersedes: string | null;
  findings: { cautions: number; notes: number };
}

export function summaryOf(
  released: ReleasedVisit,
  place: { number: number; issue: number },
  { identity, results }: PackContext & { identity: PackIdentity },
): PackSummary {
  const count = (severity: string): number =>
    released.findings.filter((finding) => finding.severity === severity).length;
  return {
    registration: released.visit.aircraft.registration,
    pack: identity.pack,
    number: place.number,
    issue: place.issue,
    visit: identity.visit,
    issuedAt: identity.issuedAt,
    releasedBy: released.releasedBy.name,
    regime: released.regime.id,
    emptyMassKg: results.schedule?.massKg ?? null,
    emptyArmMm: results.schedule?.armMm ?? null,
    supersedes: identity.supersedes ?? null,
    findings: { cautions: count('caution'), notes: count('note') },
  };
}
