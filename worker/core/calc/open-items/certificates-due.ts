import type { Visit } from '../../record/visit.ts';
import type { OpenItem } from './open-item.ts';

/**
 * Returns the certificates of an aircraft that have a last day, as items due. They are part of every record, so no
 * pack leaves them open; one without a title is named by its kind.
 */
export function certificatesDue({ certificates = [] }: Pick<Visit, 'certificates'>): OpenItem[] {
  return certificates.flatMap(({ id, kind, title, validUntil }): OpenItem[] =>
    validUntil === undefined
      ? []
      : [{ id, kind: 'certificate', text: title ?? kind, until: { date: validUntil }, of: 'airframe' }],
  );
}
