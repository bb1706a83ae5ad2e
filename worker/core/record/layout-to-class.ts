import { UNSTATED_CLASS } from './class.ts';
import type { Path, UpgradeStep } from './upgrade-step.ts';

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const isAt = (path: Path, field: string): boolean => path[0] === 'aircraft' && path[1] === field;

/**
 * From version 2 to 3: the layout was the undercarriage, or weight-shift control, which is a class. Any other class
 * was not asked for, so it stays unstated.
 */
export const layoutToClass: UpgradeStep = {
  from: 2,
  apply: (record) => {
    const { aircraft } = record;
    if (!isObject(aircraft)) return record;
    const { layout, ...rest } = aircraft;
    const isWeightShift = layout === 'weight-shift';
    return {
      ...record,
      aircraft: {
        ...rest,
        class: isWeightShift ? 'weight-shift' : UNSTATED_CLASS,
        ...(layout !== undefined && !isWeightShift && { undercarriage: layout }),
      },
    };
  },
  pathBefore: (path) => (isAt(path, 'undercarriage') || isAt(path, 'class') ? path.with(1, 'layout') : path),
  pathAfter: (path) => (isAt(path, 'layout') ? path.with(1, 'undercarriage') : path),
};
