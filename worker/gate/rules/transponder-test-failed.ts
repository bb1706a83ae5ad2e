import { phrase } from '../../words/words.ts';
import { CHECK_NAMES, checkName } from '../check-name.ts';
import { nameOfFigure } from '../figure-name.ts';
import { rangeText } from '../range-text.ts';
import { type Hit, type Rule, read } from '../rule.ts';

const PATH = ['surveillance', 'transponderTest'];

export const transponderTestFailed: Rule = {
  code: 'TRANSPONDER_TEST_FAILED',
  severity: 'blocks',
  meaning: 'A figure of the transponder test is outside its limits, or the transponder answers wrongly',
  remedy: phrase`Have the transponder, antenna or cable put right and test again`,
  source: read('14 CFR 43 Appendix F'),
  check: ({ results, say }) => {
    const { transponder = [], modeS = [] } = results.surveillance ?? {};
    return [
      ...transponder.flatMap((figure): Hit[] =>
        figure.isWithin
          ? []
          : [
              {
                path: PATH,
                sentence: say.words`${nameOfFigure(figure.figure, say)} ${say.plain(figure.value, 1)} ${figure.unit} is outside its limits ${rangeText(figure, say)}`,
                data: { value: figure.value },
              },
            ],
      ),
      ...modeS.flatMap((check): Hit[] =>
        check.outcome === 'failed'
          ? [
              {
                path: PATH,
                sentence: say.words`The transponder failed a check of Mode S, ${check.paragraph}: ${checkName(check, say)}`,
                data: { name: CHECK_NAMES[check.check], check: check.check },
              },
            ]
          : [],
      ),
    ];
  },
};
