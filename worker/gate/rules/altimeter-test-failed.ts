import { phrase } from '../../words/words.ts';
import { figureName } from '../figure-name.ts';
import { rangeText } from '../range-text.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const altimeterTestFailed: Rule = {
  code: 'ALTIMETER_TEST_FAILED',
  severity: 'blocks',
  meaning: 'A figure of the altimeter test is outside its limits',
  remedy: phrase`Have the altimeter or the static system put right and test again`,
  source: read('14 CFR 43 Appendix E'),
  check: ({ results, say }) =>
    (results.surveillance?.altimeter ?? []).flatMap((figure): Hit[] =>
      figure.isWithin
        ? []
        : [
            {
              path: ['surveillance', 'altimeter'],
              sentence: say.words`${figureName(figure, say)}: ${say.plain(figure.value, Number.isInteger(figure.value) ? 0 : 1)} ${figure.unit} is outside its limits ${rangeText(figure, say)}`,
              data: { value: figure.value },
            },
          ],
    ),
};
