import type { Part } from '../../../record/parts-trace.ts';
import * as m from '../../../text/generated/messages.ts';
import { type Said, said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { fittedItems } from '../../fitted-items.ts';
import { hitsIn } from '../../hits.ts';
import { memory, type Rule } from '../../rule.ts';
import { isNumbered } from '../../same-number.ts';

export const partPaperUnfit: Rule = {
  code: 'PART_PAPER_UNFIT',
  severity: 'caution',
  meaning: 'The release document of a part does not fit its condition, its serial number, or its kind at another part',
  remedy: m.partPaperUnfit_remedy,
  source: memory('ML.A.501(a) and (b)'),
  check: ({ visit: { parts }, results }) => {
    const serialled = new Set(
      fittedItems(results).flatMap(({ item, part }) => (part !== undefined && isNumbered(item.serial) ? [part] : [])),
    );
    const kinds = kindsByReference(parts);
    return hitsIn(['parts'], parts, ({ id, description, condition, releaseDocument }) => {
      if (!releaseDocument) return undefined;
      const { kind, reference } = releaseDocument;
      const values = { id, description, reference };
      const says = (sentence: Said) => ({
        field: ['releaseDocument', 'kind'],
        sentence,
        data: { part: id, kind },
      });
      if (condition) {
        const stated = { ...values, condition: termOf(condition) };
        const isUsed = condition === 'overhauled' || condition === 'serviceable';
        if (isUsed && kind !== 'release-certificate') return says(said(m.partPaperUnfit_used, stated));
        if ((condition === 'owner-made') !== (kind === 'owner-declaration'))
          return says(said(m.partPaperUnfit_ownerMade, stated));
      }
      if (kind === 'standard-part' && serialled.has(id)) return says(said(m.partPaperUnfit_standardPart, values));
      return (kinds.get(reference)?.size ?? 0) > 1 ? says(said(m.partPaperUnfit_twoKinds, values)) : undefined;
    });
  },
};

function kindsByReference(parts: readonly Part[] | undefined): Map<string, Set<string>> {
  const kinds = new Map<string, Set<string>>();
  for (const { releaseDocument } of parts ?? [])
    if (releaseDocument)
      kinds.set(
        releaseDocument.reference,
        (kinds.get(releaseDocument.reference) ?? new Set()).add(releaseDocument.kind),
      );
  return kinds;
}
