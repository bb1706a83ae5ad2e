import { eachField } from '../../../record/visit-fields.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { codePointName, unprintableIn } from '../../../text/printable.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const textUnprintable: Rule = {
  code: 'TEXT_UNPRINTABLE',
  severity: 'blocks',
  meaning: 'A text has characters that cannot be printed',
  remedy: m.writeLatinLettersSigns,
  source: PRACTICE,
  check: ({ visit }) => {
    const hits: Hit[] = [];
    eachField(visit, 'text', (value, place) => {
      const characters = unprintableIn(value);
      if (characters.length > 0) hits.push(hitAt(place().path, characters.map(codePointName)));
    });
    return hits;
  },
};

function hitAt(path: Hit['path'], characters: readonly string[]): Hit {
  return {
    path,
    sentence: said(m.textUnprintable_textCharactersCannotPrinted, { characters: characters.join(', ') }),
    data: { characters: characters.join(' ') },
  };
}
