import type { PackSummary } from '../../core/core.ts';
import type { IndexedPack } from './archive.ts';

/** Row in the list of all packs, as stored. */
export interface IndexRow {
  pack: string;
  registration: string;
  issuedAt: string;
  summary: string;
  supersededBy: string | null;
  withdrawnAt: string | null;
}

/** Reads a row, if its two copies of a fact agree; undefined if it cannot be read. */
export function indexedPackIn({ summary: text, supersededBy, withdrawnAt, ...row }: IndexRow): IndexedPack | undefined {
  try {
    const summary = JSON.parse(text) as PackSummary | null;
    const isSame = (['pack', 'registration', 'issuedAt'] as const).every((key) => summary?.[key] === row[key]);
    return summary && isSame ? { summary, supersededBy, withdrawnAt } : undefined;
  } catch {
    return undefined;
  }
}
