import * as z from 'zod';
import type { ReleasedVisit } from '../gate/release.ts';
import type { PackContext } from './context.ts';
import type { PackIdentity } from './identity.ts';

/** Summary of a pack for lists and the owner's page, available without opening it. */
export const PackSummary = z
  .object({
    registration: z.string(),
    pack: z.string(),
    number: z.int(),
    issue: z.int(),
    visit: z.string(),
    issuedAt: z.string().meta({ description: 'When it was sealed', format: 'date-time' }),
    releasedBy: z.string(),
    regime: z.string(),
    emptyMassKg: z.number().nullable(),
    emptyArmMm: z.number().nullable(),
    supersedes: z.string().nullable(),
    findings: z.object({ cautions: z.int(), notes: z.int() }),
  })
  .meta({ title: 'Pack summary' });
export type PackSummary = z.infer<typeof PackSummary>;

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
