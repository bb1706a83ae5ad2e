import { saidFault } from '../../../text/faults.ts';
import * as m from '../../../text/generated/messages.ts';
import { list, said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, type RuleInput, read } from '../../rule.ts';

/** Finds the inks of a document that an earlier document mixes differently. */
function otherwiseMixed({ facts }: RuleInput): (sha256: string) => string[] {
  const mixtures = new Map<string, string>();
  return (sha256) => {
    const fact = facts.attachments?.[sha256];
    const inks = fact?.ok && fact.kind === 'pdf' ? Object.entries(fact.inks ?? {}) : [];
    return inks.flatMap(([ink, mixture]) => {
      const known = mixtures.get(ink) ?? mixture;
      mixtures.set(ink, known);
      return known === mixture ? [] : [ink];
    });
  };
}

export const attachmentNotArchival: Rule = {
  code: 'ATTACHMENT_NOT_ARCHIVAL',
  severity: 'note',
  meaning: 'Because of an attached document the pack is not an archival and accessible PDF',
  remedy: m.attachmentNotArchival_remedy,
  source: read('ISO 19005-3 and ISO 14289-1, as far as the checks of this project go'),
  check: (input) => {
    const { visit, facts } = input;
    const mixedOtherwise = otherwiseMixed(input);
    return hitsIn(['attachments'], visit.attachments, ({ id, title, sha256 }) => {
      const fact = facts.attachments?.[sha256];
      if (!fact?.ok || fact.kind !== 'pdf') return undefined;
      const reasons = [
        ...fact.obstacles.map((obstacle) => saidFault(obstacle)),
        ...mixedOtherwise(sha256).map((ink) => said(m.attachmentNotArchival_anotherPaperMixesInk, { ink })),
      ];
      if (reasons.length === 0) return undefined;
      return {
        field: 'sha256',
        sentence: said(m.attachmentNotArchival_keepsPackBeingArchival, { id, title, reasons: list(reasons, '; ') }),
        data: { attachment: id },
      };
    });
  },
};
