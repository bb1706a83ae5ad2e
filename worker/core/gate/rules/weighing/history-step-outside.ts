import { cgMm, hasMass, minus } from '../../../calc/mass/mass-moment.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { armOutside } from '../../range-text.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

/** Smallest shift of the centre of gravity that two weighings of one aircraft do not explain. */
const SCATTER_MM = 5;

export const historyStepOutside: Rule = {
  code: 'HISTORY_STEP_OUTSIDE',
  severity: 'caution',
  meaning: 'A step of the empty mass history has its arm outside the airframe',
  remedy: m.historyStepOutside_remedy,
  source: PRACTICE,
  check: ({ visit: { aircraft, baseline } }) => {
    const { airframe } = aircraft;
    const history = baseline?.history ?? [];
    return hitsIn(['baseline', 'history'], history, (entry, index) => {
      const before = history[index - 1];
      if (!before || !hasMass(entry)) return undefined;
      const step = minus(entry, before);
      if (step.massKg === 0) return undefined;
      const armMm = cgMm(step);
      const beyondMm = Math.max(airframe.forwardMm - armMm, armMm - airframe.aftMm);
      if ((beyondMm * Math.abs(step.massKg)) / entry.massKg <= SCATTER_MM) return undefined;
      return {
        field: 'moment',
        sentence: said(m.historyStepOutside_step, {
          date: figure.date(entry.date),
          reason: entry.reason,
          mass: figure.measure('mass', step.massKg, { signed: true }),
          ...armOutside(armMm, airframe),
        }),
        data: { stepKg: step.massKg, armMm },
      };
    });
  },
};
