import { printNumber } from '../../units/rounding.ts';
import { rangeText } from '../range-text.ts';
import { type Hit, type Rule, read } from '../rule.ts';

/** Appendix F asks for at least two other addresses. */
const LEAST_OTHERS = 2;

export const transponderTestFailed: Rule = {
  code: 'TRANSPONDER_TEST_FAILED',
  severity: 'blocks',
  meaning: 'A figure of the transponder test is outside its limits',
  remedy: 'Have the transponder, antenna or cable put right and test again',
  source: read('14 CFR 43 Appendix F'),
  check: ({ visit, results }) => {
    const hits = (results.surveillance?.transponder ?? []).flatMap((figure): Hit[] =>
      figure.isWithin
        ? []
        : [
            {
              path: ['surveillance', 'transponderTest'],
              sentence: `${figure.name} ${printNumber(figure.value, 1)} ${figure.unit} is outside its limits ${rangeText(figure)}`,
              data: { value: figure.value },
            },
          ],
    );
    const test = visit.surveillance?.transponderTest;
    if (!test?.class.startsWith('S')) return hits;
    const answersRightly =
      test.repliesToOwnAddress === true &&
      test.repliedToOther === false &&
      (test.otherAddressesTried ?? 0) >= LEAST_OTHERS;
    if (answersRightly) return hits;
    return [
      ...hits,
      {
        path: ['surveillance', 'transponderTest'],
        sentence: 'The test does not show that the transponder answers to its own address and not to two others',
      },
    ];
  },
};
