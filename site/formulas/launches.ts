import { launchesLeft } from '../../worker/core/calc/lives/launches-left.ts';
import { inputOf } from './case-of.ts';
import type { Formula } from './formula.ts';
import { sum } from './steps.ts';

const LAUNCHES = 'n = \\left\\lfloor \\frac{a - d}{k} \\right\\rfloor';

export const launches: Formula = {
  id: 'launches-left',
  title: 'Launches left by actuations',
  tex: [LAUNCHES],
  symbols: [
    ['n', 'launches left, rounded down', ''],
    ['a', 'actuations allowed', ''],
    ['d', 'actuations done', ''],
    ['k', 'actuations of one launch, with its checks', ''],
  ],
  by: [launchesLeft],
  holds: 'For a part whose life is stated in actuations, such as a tow release.',
  example() {
    const input = inputOf<Parameters<typeof launchesLeft>[0]>('GL-14b');
    return {
      case: 'GL-14b',
      given: { a: [input.allowedActuations, ''], d: [0, ''], k: [input.actuationsPerLaunch, ''] },
      steps: [sum(LAUNCHES, launchesLeft(input), '', 'launches')],
    };
  },
};
