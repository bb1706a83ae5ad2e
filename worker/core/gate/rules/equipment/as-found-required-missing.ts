import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const asFoundRequiredMissing: Rule = {
  code: 'AS_FOUND_REQUIRED_MISSING',
  severity: 'blocks',
  meaning: 'A required item was found missing and not replaced',
  remedy: m.asFoundRequiredMissing_remedy,
  source: read('14 CFR 43.11; ML.A.403'),
  check: ({ visit, results }) => {
    const now = new Set(results.change.after.filter(({ required }) => required).map(({ name }) => name));
    return hitsIn(['asFound'], visit.asFound, (line) => {
      const listed =
        line.kind === 'missing' ? visit.baseline?.equipment?.find(({ id }) => id === line.item) : undefined;
      if (!listed?.required || now.has(listed.name)) return undefined;
      return {
        sentence: said(m.asFoundRequiredMissing_itemRequiredFoundMissing, {
          listed: listed.id,
          listed2: listed.name,
        }),
        data: { item: listed.id },
      };
    });
  },
};
