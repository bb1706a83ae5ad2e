import { UNSTATED_CLASS } from './class.ts';
import { isObject } from './is-object.ts';
import { renaming, type UpgradeStep } from './upgrade-step.ts';

const renamed = renaming(2, [{ of: ['aircraft'], before: 'layout', after: 'undercarriage' }]);

/**
 * From version 2 to 3: the layout was the undercarriage, or weight-shift control, which is a class. Any other class
 * was not part of it, so it stays unstated.
 */
export const layoutToClass: UpgradeStep = {
  ...renamed,
  apply: (record) => {
    const present = renamed.apply(record);
    const { aircraft } = present;
    if (!isObject(aircraft)) return present;
    const { undercarriage, ...rest } = aircraft;
    const isWeightShift = undercarriage === 'weight-shift';
    return {
      ...present,
      aircraft: {
        class: isWeightShift ? 'weight-shift' : UNSTATED_CLASS,
        ...(isWeightShift ? rest : aircraft),
      },
    };
  },
};
