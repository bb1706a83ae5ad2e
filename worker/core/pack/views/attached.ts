import type { Attachment } from '../../record/visit.ts';
import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';

/** Returns the subject of an attachment: its identifier and its description. */
export function concernsLine({ visit, fmt }: PackContext, { concerns }: Attachment): string {
  if (concerns === undefined) return DASH;
  const { findings = [], modifications = [], parts = [], inspection, bulletins, wiring } = visit;
  const named = [
    ...findings.map(({ id, text }) => ({ id, what: fmt.text(m.attached_finding, { text }) })),
    ...modifications.map(({ id, title }) => ({ id, what: fmt.text(m.attached_modification, { title }) })),
    ...parts.map(({ id, description }) => ({ id, what: fmt.text(m.attached_part, { description }) })),
    ...(inspection?.tasks ?? []).map(({ id, text }) => ({ id, what: fmt.text(m.attached_task, { text }) })),
    ...(bulletins?.items ?? []).map(({ id, subject }) => ({ id, what: fmt.text(m.attached_bulletin, { subject }) })),
    ...(wiring?.found ?? []).map(({ id }) => ({ id, what: fmt.text(m.foundWire) })),
  ];
  const found = named.find(({ id }) => id === concerns);
  return found ? `${concerns}, ${found.what}` : concerns;
}
