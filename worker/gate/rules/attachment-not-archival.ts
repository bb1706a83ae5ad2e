import { retold } from '../../words/retold.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, type RuleInput, read } from '../rule.ts';

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
  remedy: phrase`Have it saved as PDF/A of level a or u; the pack is whole and sealed without it all the same`,
  source: read('ISO 19005-3 and ISO 14289-1, as far as the checks of this project go'),
  check: (input) => {
    const { visit, facts, say } = input;
    const mixedOtherwise = otherwiseMixed(input);
    return (visit.attachments ?? []).flatMap(({ id, title, sha256 }, index): Hit[] => {
      const fact = facts.attachments?.[sha256];
      if (!fact?.ok || fact.kind !== 'pdf') return [];
      const reasons = [
        ...fact.obstacles.map((obstacle) => retold(obstacle, say.lexicon)),
        ...mixedOtherwise(sha256).map((ink) => say.words`another paper mixes the ink ${ink} in another way`),
      ];
      if (reasons.length === 0) return [];
      return [
        {
          path: ['attachments', index, 'sha256'],
          sentence: say.words`${id}, ${title}, keeps the pack from being an archival PDF: ${reasons.join('; ')}`,
          data: { attachment: id },
        },
      ];
    });
  },
};
