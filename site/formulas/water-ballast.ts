import { afterDump, dumpTime } from '../../worker/core/calc/loading/dump.ts';
import { matchedTailBallastKg, tailFilling } from '../../worker/core/calc/loading/matched-ballast.ts';
import { inputOf } from './case-of.ts';
import type { Formula } from './formula.ts';
import { said, sum } from './steps.ts';

const MATCHED = 't = t_1 + \\frac{w - w_1}{w_2 - w_1} \\cdot (t_2 - t_1)';

const matched: Formula = {
  id: 'matched-tail-ballast',
  title: 'Tail ballast that matches wing water',
  tex: [MATCHED, 'o = b - t'],
  symbols: [
    ['t', 'tail ballast that matches', 'kg'],
    ['w', 'water in the wings', 'kg'],
    ['w_1', 'wing water of the line before', 'kg'],
    ['w_2', 'wing water of the line after', 'kg'],
    ['t_1', 'tail ballast of the line before', 'kg'],
    ['t_2', 'tail ballast of the line after', 'kg'],
    ['o', 'tail ballast above the match; not below 0', 'kg'],
    ['b', 'tail ballast in the tank', 'kg'],
  ],
  by: [matchedTailBallastKg, tailFilling],
  holds:
    'For a tank that balances wing water and nothing else. Up to the match and one mark of the tank are permitted, without wing water nothing. Above the last line no figure is given.',
  example() {
    const { table } = inputOf<{ table: [number, number][] }>('GL-03');
    const rows = table.map(([wingWaterKg, tailBallastKg]) => ({ wingWaterKg, tailBallastKg }));
    const [before, after] = [rows[1], rows[2]];
    const filling = tailFilling({ table: rows, wingWaterKg: 80, tailBallastKg: 3.5 });
    return {
      case: 'GL-03',
      given: {
        w: [80, 'kg'],
        w_1: [before?.wingWaterKg ?? Number.NaN, 'kg'],
        w_2: [after?.wingWaterKg ?? Number.NaN, 'kg'],
        t_1: [before?.tailBallastKg ?? Number.NaN, 'kg'],
        t_2: [after?.tailBallastKg ?? Number.NaN, 'kg'],
        b: [3.5, 'kg'],
      },
      steps: [
        sum(MATCHED, matchedTailBallastKg(rows, 80) ?? Number.NaN, 'kg', 'at80'),
        sum('o = b - t', filling?.overKg ?? Number.NaN, 'kg'),
        said(filling?.isAllowed ? 'The filling is permitted.' : 'The filling is not permitted.'),
      ],
    };
  },
};

const TIME = 't = \\frac{V}{q}';
const U_TIME = 'u_t = t \\cdot \\frac{u_q}{q}';

const time: Formula = {
  id: 'dump-time',
  title: 'Time to dump water',
  tex: [TIME, U_TIME],
  symbols: [
    ['t', 'time', 's'],
    ['V', 'volume of the tank or of the side', 'l'],
    ['q', 'its flow', 'l/s'],
    ['u_t', 'standard uncertainty of the time', 's'],
    ['u_q', 'standard uncertainty of the flow', 'l/s'],
  ],
  by: [dumpTime],
  holds: 'At one flow until the tank is empty; a manual gives it as an average.',
  example() {
    const { volume, flow } = inputOf<{ volume: number; flow: number }>('GL-13');
    const found = dumpTime({ volumeL: volume, flowLPerS: flow, standardFlowLPerS: 0.1 });
    return {
      case: 'GL-13',
      given: { V: [volume, 'l'], q: [flow, 'l/s'], u_q: [0.1, 'l/s'] },
      steps: [
        sum(TIME, found?.seconds ?? Number.NaN, 's', 'seconds'),
        sum(U_TIME, found?.standardS ?? Number.NaN, 's'),
      ],
    };
  },
};

const AFTER = 'm_2 = m_1 - w_d';
const STUCK = 'Y = \\frac{L_0 + w_s \\cdot y}{m_2}';

const stuck: Formula = {
  id: 'after-dumping',
  title: 'After dumping, with one side stuck',
  tex: [AFTER, STUCK],
  symbols: [
    ['m_1', 'mass before', 'kg'],
    ['m_2', 'mass after', 'kg'],
    ['w_d', 'water that was dumped', 'kg'],
    ['Y', 'lateral centre of gravity after, right positive', 'mm'],
    ['L_0', 'lateral moment of all but the wing water', 'kg·mm'],
    ['w_s', 'water that stays in the stuck side', 'kg'],
    ['y', 'its lateral distance, right positive', 'mm'],
  ],
  by: [afterDump],
  holds: 'With one mean distance for the water of a wing.',
  example() {
    const found = afterDump({ massKg: 600, water: { leftKg: 80, rightKg: 80, lateralMm: 2400, stuck: 'right' } });
    return {
      given: { m_1: [600, 'kg'], w_d: [80, 'kg'], L_0: [0, 'kg·mm'], w_s: [80, 'kg'], y: [2400, 'mm'] },
      steps: [sum(AFTER, found.massKg, 'kg'), sum(STUCK, found.lateralMm ?? Number.NaN, 'mm')],
    };
  },
};

export const water: readonly Formula[] = [matched, time, stuck];
