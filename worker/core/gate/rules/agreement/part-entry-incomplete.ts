import * as m from '../../../text/generated/messages.ts';
import { list, said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const partEntryIncomplete: Rule = {
  code: 'PART_ENTRY_INCOMPLETE',
  severity: 'caution',
  meaning: 'A part has no number, no condition, no day of its paper or fitting, or nobody who received it',
  remedy: m.partEntryIncomplete_remedy,
  source: read('ML.A.501(a) (condition and paper of a part)'),
  check: ({ visit }) =>
    hitsIn(
      ['parts'],
      visit.parts,
      ({ id, description, partNumber, serialOrBatch, condition, releaseDocument, fittedOn, receivedBy }) => {
        const isStandard = releaseDocument?.kind === 'standard-part';
        const missing = [
          ...(partNumber === undefined && serialOrBatch !== undefined ? [m.partEntryIncomplete_partNumber] : []),
          ...(partNumber === undefined && serialOrBatch === undefined ? [m.partEntryIncomplete_number] : []),
          ...(partNumber !== undefined && serialOrBatch === undefined && !isStandard
            ? [m.partEntryIncomplete_batch]
            : []),
          ...(releaseDocument && !releaseDocument.date ? [m.partEntryIncomplete_paperDay] : []),
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
    ),
};
