import { type ControlAxis, type ControlCheck, MOVEMENTS } from '../record/control-check.ts';

type Check = Pick<ControlCheck, 'axis' | 'movement'>;

/** Movements that a check of a control can state, the correct one first; undefined for a control without a fixed sense. */
export function movementsOf(axis: ControlAxis): readonly string[] | undefined {
  return Object.entries(MOVEMENTS).find(([name]) => name === axis)?.[1];
}

/** Whether a check states that the surface moved against the control. */
export function isAgainst({ axis, movement }: Check): boolean {
  const movements = movementsOf(axis) ?? [];
  return movement !== undefined && movements.indexOf(movement) > 0;
}
