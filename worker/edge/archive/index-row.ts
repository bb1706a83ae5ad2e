import type { PackSummary } from '../../core/core.ts';
import type { IndexedPack } from './archive.ts';

/** A row of the list of all packs, as it stands there. */
export interface IndexRow {
  pack: string;
  registration: string;
  issuedAt: string;
  summary: string;
  supersededBy: string | null;
  withdrawnAt: string | null;
}

/** What a row says, where it says the same of itself twice; undefined where it cannot be read. */
export function indexedPackIn({ summary: text, supersededBy, withdrawnAt, ...row }: IndexRow): IndexedPack | undefined {
  try {
    const summary = JSON.parse(text) as PackSummary | null;
    const isSame = (['pack', 'registration', 'issuedAt'] as const).every((key) => summary?.[key] === row[key]);
    return summary && isSame ? { summary, supersededBy, withdrawnAt } : undefined;
  } catch {
    return undefined;
  }
}
