import { printableLineOf } from '../../text/printable.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

/** Characters below which a reason cannot be a sentence. */
const LEAST_LENGTH = 15;

export const acknowledgementThin: Rule = {
  code: 'ACKNOWLEDGEMENT_THIN',
  severity: 'blocks',
  meaning: 'The reason given for accepting a caution says nothing',
  remedy: phrase`Say in a sentence why it is acceptable`,
  source: PRACTICE,
  check: ({ visit, say }) =>
    (visit.release?.acknowledgements ?? []).flatMap(({ code, reason }, index): Hit[] =>
      printableLineOf(reason).length >= LEAST_LENGTH
        ? []
        : [
            {
              path: ['release', 'acknowledgements', index, 'reason'],
              sentence: say.words`The reason for accepting ${code} is too short to be understood later`,
              data: { code },
            },
          ],
    ),
};
