import { type ControlAxis, type ControlCheck, MOVEMENTS, type Movement } from '../record/control-check.ts';

type Check = Pick<ControlCheck, 'axis' | 'movement'>;

/** Movements that a check of a control can state, the correct one first; undefined for a control without a fixed sense. */
export function movementsOf(axis: ControlAxis): readonly Movement[] | undefined {
  return axis in MOVEMENTS ? MOVEMENTS[axis as keyof typeof MOVEMENTS] : undefined;
}

/** Whether a check states that the surface moved against the control. */
export function isAgainst({ axis, movement }: Check): boolean {
  return movement !== undefined && (movementsOf(axis) ?? []).indexOf(movement) > 0;
}
