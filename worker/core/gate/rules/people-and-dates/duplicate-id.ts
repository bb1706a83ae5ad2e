import { ENTRIES } from '../../../record/meaning.ts';
import type { Place } from '../../../record/record-index.ts';
import type { Visit } from '../../../record/visit.ts';
import { fieldsOf } from '../../../record/visit-fields.ts';
import * as m from '../../../text/generated/messages.ts';
import { type Message, said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const duplicateId: Rule = {
  code: 'DUPLICATE_ID',
  severity: 'blocks',
  meaning: 'Two entries of one list have the same identifier',
  remedy: m.duplicateId_remedy,
  source: PRACTICE,
  check: ({ visit }) => {
    const seen = new Set<string>();
    return hits(identities(visit), ({ what, value, path }) => {
      const inList = `${path.slice(0, -2).join('/')} ${value}`;
      if (!seen.has(inList)) {
        seen.add(inList);
        return undefined;
      }
      return { path, sentence: said(m.duplicateId_thereAlready, { what: said(what), value }), data: { id: value } };
    });
  },
};

/** Identifiers that must be unique in their lists. */
function identities(visit: Visit): (Pick<Place, 'path'> & { what: Message; value: string })[] {
  return [
    ...fieldsOf(visit, 'identifier').flatMap(({ means, value, path, around }) =>
      means.repeatable !== undefined || around.at(-1)?.position === undefined
        ? []
        : [{ what: ENTRIES[means.of[0]], value, path }],
    ),
    ...fieldsOf(visit, 'reference').flatMap(({ means, value, path }) =>
      means.once === undefined ? [] : [{ what: means.once, value, path }],
    ),
  ];
}
