import * as m from '../../../text/generated/messages.ts';
import { list, said } from '../../../text/message.ts';
import { fittedItems } from '../../fitted-items.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';
import { isNumbered } from '../../same-number.ts';

export const partEntryIncomplete: Rule = {
  code: 'PART_ENTRY_INCOMPLETE',
  severity: 'caution',
  meaning: 'A part has no number, no condition, no day of fitting, or nobody who received it',
  remedy: m.partEntryIncomplete_remedy,
  source: read('ML.A.501(a) (condition and paper of a part)'),
  check: ({ visit, results }) => {
    const items = fittedItems(results);
    return hitsIn(
      ['parts'],
      visit.parts,
      ({ id, description, partNumber, serialOrBatch, condition, fittedOn, receivedBy }) => {
        const own = items.filter(({ part }) => part === id).map(({ item }) => item);
        const missing = [
          ...(partNumber === undefined && own.some((item) => item.partNumber)
            ? [m.partEntryIncomplete_partNumber]
            : []),
          ...(serialOrBatch === undefined && own.some((item) => isNumbered(item.serial))
            ? [m.partEntryIncomplete_serial]
            : []),
          ...(partNumber === undefined && serialOrBatch === undefined ? [m.partEntryIncomplete_number] : []),
          ...(condition ? [] : [m.partEntryIncomplete_condition]),
          ...(fittedOn ? [] : [m.partEntryIncomplete_fitted]),
          ...(receivedBy ? [] : [m.partEntryIncomplete_received]),
        ];
        if (missing.length === 0) return undefined;
        return {
          sentence: said(m.partEntryIncomplete_missing, {
            id,
            description,
            missing: list(missing.map((each) => said(each))),
          }),
          data: { part: id, count: missing.length },
        };
      },
    );
  },
};
