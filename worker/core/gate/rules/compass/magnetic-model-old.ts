import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { dateOf } from '../../../units/calendar.ts';
import { type Rule, read } from '../../rule.ts';

export const magneticModelOld: Rule = {
  code: 'MAGNETIC_MODEL_OLD',
  severity: 'caution',
  meaning: 'The magnetic model was not valid on the day of the swing',
  remedy: m.magneticModelOld_remedy,
  source: read('World Magnetic Model, validity of five years'),
  check: ({ visit, results }) => {
    const variation = results.compass?.variation;
    const on = visit.compass && dateOf(visit.compass.swungAt);
    if (!variation || !on || (variation.validFrom <= on && on <= variation.validUntil)) return undefined;
    return {
      path: ['compass', 'swungAt'],
      sentence: said(m.magneticModelOld_holdsUntilCompassSwung, {
        model: variation.model,
        validUntil: figure.date(variation.validUntil),
        on: figure.date(on),
      }),
      data: { validUntil: variation.validUntil },
    };
  },
};
