import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { instantOf } from '../../../units/calendar.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const wiringTestOlder: Rule = {
  code: 'WIRING_TEST_OLDER',
  severity: 'caution',
  meaning: 'Wires were added, but the wiring was tested before any modification was finished',
  remedy: m.wiringTestOlder_remedy,
  source: PRACTICE,
  check: ({ visit: { wiring, modifications = [] } }) => {
    const at = wiring?.test?.at;
    const finished = modifications.map(({ finishedAt }) => finishedAt).sort((a, b) => instantOf(a) - instantOf(b));
    const [first] = finished;
    const isAdded = wiring?.wires.some(({ change }) => change === 'added') ?? false;
    if (at === undefined || first === undefined || !isAdded || instantOf(at) >= instantOf(first)) return undefined;
    return {
      path: ['wiring', 'test', 'at'],
      sentence: said(m.wiringTestOlder_before, { at: figure.timestamp(at), first: figure.timestamp(first) }),
    };
  },
};
