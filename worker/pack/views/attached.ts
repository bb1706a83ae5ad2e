import type { Attachment, Visit } from '../../visit/visit.ts';
import { DASH } from '../people.ts';

/** What an attachment belongs to, in words: its identifier and what that is. */
export function concernsLine(visit: Visit, { concerns }: Attachment): string {
  if (concerns === undefined) return DASH;
  const { findings = [], modifications = [], parts = [], inspection, bulletins, wiring } = visit;
  const named = [
    ...findings.map(({ id, text }) => ({ id, what: `finding: ${text}` })),
    ...modifications.map(({ id, title }) => ({ id, what: `modification: ${title}` })),
    ...parts.map(({ id, description }) => ({ id, what: `part: ${description}` })),
    ...(inspection?.tasks ?? []).map(({ id, text }) => ({ id, what: `task: ${text}` })),
    ...(bulletins?.items ?? []).map(({ id, subject }) => ({ id, what: `bulletin: ${subject}` })),
    ...(wiring?.found ?? []).map(({ id }) => ({ id, what: 'found wire' })),
  ];
  const found = named.find(({ id }) => id === concerns);
  return found ? `${concerns}, ${found.what}` : concerns;
}
