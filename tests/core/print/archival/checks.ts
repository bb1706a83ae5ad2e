import type { Check } from './check.ts';
import { ATTACHMENT_CHECKS } from './checks/attachment-checks.ts';
import { COLOUR_CHECKS } from './checks/colour-checks.ts';
import { CONTENT_CHECKS } from './checks/content-checks.ts';
import { FILE_CHECKS } from './checks/file-checks.ts';
import { FONT_CHECKS } from './checks/font-checks.ts';
import { METADATA_CHECKS } from './checks/metadata-checks.ts';
import { NAVIGATION_CHECKS } from './checks/navigation-checks.ts';
import { STRUCTURE_CHECKS } from './checks/structure-checks.ts';
import { TABLE_CHECKS } from './checks/table-checks.ts';
import { openPdf } from './pdf-file.ts';

/** Everything that a pack keeps of PDF/A-3a and PDF/UA-1, one check a clause. */
export const CHECKS: readonly Check[] = [
  ...FILE_CHECKS,
  ...METADATA_CHECKS,
  ...COLOUR_CHECKS,
  ...FONT_CHECKS,
  ...CONTENT_CHECKS,
  ...STRUCTURE_CHECKS,
  ...TABLE_CHECKS,
  ...NAVIGATION_CHECKS,
  ...ATTACHMENT_CHECKS,
];

/** What breaks the checks in a file, by the name of the check; empty when all are kept. Up to five defects of each. */
export async function archivalDefects(bytes: Uint8Array): Promise<Record<string, string[]>> {
  const file = await openPdf(bytes);
  const broken = CHECKS.map(({ name, defects }): [string, string[]] => [name, defects(file).slice(0, 5)]);
  return Object.fromEntries(broken.filter(([, defects]) => defects.length > 0));
}
