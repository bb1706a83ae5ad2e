import { ENTRIES } from '../../../record/meaning.ts';
import { fieldsOf } from '../../../record/visit-fields.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const referenceUnknown: Rule = {
  code: 'REFERENCE_UNKNOWN',
  severity: 'blocks',
  meaning: 'The record refers to an entry that does not exist',
  remedy: m.referenceUnknown_remedy,
  source: PRACTICE,
  check: ({ visit }) => {
    const known = new Set(
      fieldsOf(visit, 'identifier').flatMap(({ value, means }) => means.of.map((kind) => `${kind} ${value}`)),
    );
    return fieldsOf(visit, 'reference')
      .filter(({ means }) => means.code === undefined && (!means.unlessAbsent || means.unlessAbsent in visit))
      .filter(({ value, means }) => !means.to.some((kind) => known.has(`${kind} ${value}`)))
      .map(({ value, path, means }) => ({
        path,
        sentence: said(m.referenceUnknown_recordNo, { called: said(means.called ?? ENTRIES[means.to[0]]), value }),
        data: { id: value },
      }));
  },
};
