import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

/** Undercarriages on which an aircraft may be weighed without a pair of points. */
const NO_PAIR: ReadonlySet<string> = new Set(['single-wheel', 'hung']);

export const pointsOnOneSide: Rule = {
  code: 'POINTS_ON_ONE_SIDE',
  severity: 'blocks',
  meaning: 'The weighing has more points on one side than on the other',
  remedy: m.pointsOnOneSide_remedy,
  source: PRACTICE,
  check: ({ visit }) => {
    const { undercarriage } = visit.aircraft;
    const { points = [] } = visit.weighing ?? {};
    const count = (side: string): number => points.filter((point) => point.side === side).length;
    const [left, right] = [count('left'), count('right')];
    const hasPair = (undercarriage !== undefined && !NO_PAIR.has(undercarriage)) || left + right > 0;
    if (!hasPair || left === right) return undefined;
    return {
      path: ['weighing', 'points'],
      sentence: said(m.pointsOnOneSide_pointsLeftRight, { left, right }),
      data: { left, right },
    };
  },
};
