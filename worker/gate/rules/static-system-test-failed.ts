import { phrase } from '../../words/words.ts';
import { CHECK_NAMES, checkName } from '../check-name.ts';
import { figureInSentence } from '../figure-name.ts';
import { rangeText } from '../range-text.ts';
import { type Hit, type Rule, read } from '../rule.ts';

const PATH = ['surveillance', 'staticSystem'];

export const staticSystemTestFailed: Rule = {
  code: 'STATIC_SYSTEM_TEST_FAILED',
  severity: 'blocks',
  meaning: 'The static pressure system leaks or is at fault, or it was tested at too little suction',
  remedy: phrase`Have the static pressure system put right and test again`,
  source: read('14 CFR 43 Appendix E (a); 14 CFR 23.1325(b)(2)(i) before 2017'),
  check: ({ results, say }) => {
    const { figures = [], checks = [] } = results.surveillance?.staticSystem ?? {};
    return [
      ...figures.flatMap((figure): Hit[] =>
        figure.isWithin
          ? []
          : [
              {
                path: PATH,
                sentence: say.words`Static system, ${figureInSentence(figure.figure, say)}: ${say.plain(figure.value, 0)} ${figure.unit} is outside its limits ${rangeText(figure, say)}`,
                data: { value: figure.value },
              },
            ],
      ),
      ...checks.flatMap((check): Hit[] =>
        check.outcome === 'failed'
          ? [
              {
                path: PATH,
                sentence: say.words`The static system failed a check, ${check.paragraph}: ${checkName(check, say)}`,
                data: { name: CHECK_NAMES[check.check], check: check.check },
              },
            ]
          : [],
      ),
    ];
  },
};
