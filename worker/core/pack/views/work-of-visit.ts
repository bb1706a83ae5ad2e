import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';

/**
 * Names the work of the record in one line, in addition to the scope that a person wrote: what the scope leaves out is seen there.
 *
 * @returns empty if the record has no work
 */
export function workOfVisit({ visit, fmt }: PackContext): string {
  const { modifications = [], inspection, findings = [], weighing } = visit;
  const rectified = findings.filter(({ disposition }) => disposition === 'rectified').map(({ id }) => id);
  return [
    ...(modifications.length > 0 ? [modifications.map(({ id }) => id).join(', ')] : []),
    ...(inspection ? [inspection.kind] : []),
    ...(rectified.length > 0 ? [fmt.text(m.workOfVisit_rectified, { findings: rectified.join(', ') })] : []),
    ...(weighing ? [fmt.text(m.notCovered_weighing)] : []),
  ].join('; ');
}
