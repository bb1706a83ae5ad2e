import { isAtLeast, isAtMost } from '../../../calc/numbers/limit-met.ts';
import { fieldsOf } from '../../../record/visit-fields.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { armName } from '../../field-name.ts';
import { armOutside } from '../../range-text.ts';
import { type Rule, read } from '../../rule.ts';

export const armOutsideAirframe: Rule = {
  code: 'ARM_OUTSIDE_AIRFRAME',
  severity: 'blocks',
  meaning: 'An arm is outside the airframe: wrong sign or unit',
  remedy: m.armOutsideAirframe_remedy,
  source: read('AC 43.13-1B ch. 10 (arms signed from the datum)'),
  check: ({ visit }) => {
    const { forwardMm, aftMm } = visit.aircraft.airframe;
    return fieldsOf(visit, 'arm')
      .filter(
        ({ value, means }) => means.outside === undefined && !(isAtLeast(value, forwardMm) && isAtMost(value, aftMm)),
      )
      .map((place) => {
        const { value: armMm, path } = place;
        const { arm, forward, aft } = armOutside(armMm, { forwardMm, aftMm });
        return {
          path,
          sentence: said(m.armOutsideAirframe_armOutsideAirframe, { place: armName(place), arm, forward, aft }),
          data: { armMm, forwardMm, aftMm },
        };
      });
  },
};
