import { saidFault } from '../../../text/faults.ts';
import * as m from '../../../text/generated/messages.ts';
import { list, said } from '../../../text/message.ts';
import { type Hit, type Rule, type RuleInput, read } from '../../rule.ts';

/** The inks of a paper that one before it mixes otherwise, as each names them. */
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
  meaning: 'An appended paper keeps the pack from being called an archival and accessible PDF',
  remedy: m.attachmentNotArchival_remedy,
  source: read('ISO 19005-3 and ISO 14289-1, as far as the checks of this project go'),
  check: (input) => {
    const { visit, facts } = input;
    const mixedOtherwise = otherwiseMixed(input);
    return (visit.attachments ?? []).flatMap(({ id, title, sha256 }, index): Hit[] => {
      const fact = facts.attachments?.[sha256];
      if (!fact?.ok || fact.kind !== 'pdf') return [];
      const reasons = [
        ...fact.obstacles.map((obstacle) => saidFault(obstacle)),
        ...mixedOtherwise(sha256).map((ink) => said(m.attachmentNotArchival_anotherPaperMixesInk, { ink })),
      ];
      if (reasons.length === 0) return [];
      return [
        {
          path: ['attachments', index, 'sha256'],
          sentence: said(m.attachmentNotArchival_keepsPackBeingArchival, { id, title, reasons: list(reasons, '; ') }),
          data: { attachment: id },
        },
      ];
    });
  },
};
