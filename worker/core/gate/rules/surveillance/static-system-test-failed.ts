import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { checkName } from '../../check-name.ts';
import { figureInSentence } from '../../figure-name.ts';
import { type EntryHit, hits, hitsIn } from '../../hits.ts';
import { rangeText, valueOutside } from '../../range-text.ts';
import { type Rule, read } from '../../rule.ts';
import { ofTested } from '../../tested-name.ts';

export const staticSystemTestFailed: Rule = {
  code: 'STATIC_SYSTEM_TEST_FAILED',
  severity: 'blocks',
  meaning: 'The static pressure system leaks, failed a check, or was tested at too little suction',
  remedy: m.staticSystemTestFailed_remedy,
  source: read('14 CFR 43 Appendix E (a); 14 CFR 23.1325(b)(2)(i) before 2017'),
  check: ({ visit, results }) =>
    hitsIn(
      ['surveillance', 'staticSystems'],
      results.surveillance?.staticSystems,
      ({ figures, checks }, index): EntryHit[] => {
        const system = visit.surveillance?.staticSystems?.[index];
        return [
          ...hits<(typeof figures)[number], EntryHit>(figures, (measured) => {
            if (measured.isWithin) return undefined;
            return {
              sentence: said(m.staticSystemTestFailed_staticSystemOutsideLimits, {
                figure: ofTested(system, figureInSentence(measured.figure)),
                value: valueOutside(measured, 0),
                unit: measured.unit,
                range: rangeText(measured),
              }),
              data: { value: measured.value },
            };
          }),
          ...hits<(typeof checks)[number], EntryHit>(checks, (check) =>
            check.outcome === 'failed'
              ? {
                  sentence: said(m.staticSystemTestFailed_staticSystemFailedCheck, {
                    paragraph: check.paragraph,
                    check: ofTested(system, checkName(check)),
                  }),
                  data: { check: check.check },
                }
              : undefined,
          ),
        ];
      },
    ),
};
