import * as m from '../../text/generated/messages.ts';
import { sentence } from '../../text/sentence.ts';
import type { PackContext } from '../context.ts';
import { nameOf } from '../people.ts';

/** Accepted cautions about parts of the record, for the document that shows their figures. */
export function accepted({ visit, findings, fmt }: PackContext, ...parts: readonly string[]): { accepted: string[] } {
  const isHere = (pointer: string): boolean => parts.some((part) => pointer === part || pointer.startsWith(`${part}/`));
  return {
    accepted: findings.flatMap((finding) => {
      const { severity, acknowledgedBy, pointer, code } = finding;
      if (severity !== 'caution' || acknowledgedBy === undefined || !isHere(pointer)) return [];
      const acceptance = visit.release?.acknowledgements?.find((each) => each.code === code);
      const { ground, reason = '' } = acceptance ?? {};
      return [
        fmt.text(m.accepted_line, {
          sentence: sentence(finding.sentence),
          by: nameOf(visit, acknowledgedBy),
          ground: ground === undefined ? code : fmt.term(ground),
          reason: sentence(reason),
        }),
      ];
    }),
  };
}
