import { reduceWeighing, type WeighingResult } from '../../worker/core/calc/weighing/weighing.ts';
import type { Circuit, Electrical, Weighing } from '../../worker/core/record/visit.ts';
import { readVisit } from '../published/read-visit.ts';

/** Demo visit: source of numbers for examples without a published case. */
export const DEMO = readVisit('nose-wheel-full');

/** Returns the weighing of the demo visit and its result. */
export function demoWeighing(): { weighing: Weighing; result: WeighingResult } {
  const { weighing } = DEMO;
  const result = weighing && reduceWeighing(DEMO, weighing);
  if (!result) throw new Error('the demo visit weighs an aircraft');
  return { weighing, result };
}

/** Returns its electrical part. */
export function demoElectrical(): Electrical {
  if (!DEMO.electrical) throw new Error('the demo visit has an electrical part');
  return DEMO.electrical;
}

/** Returns one of its circuits. */
export function demoCircuit(id: string): Circuit {
  const circuit = demoElectrical().circuits.find((each) => each.id === id);
  if (!circuit) throw new Error(`the demo visit has the circuit ${id}`);
  return circuit;
}
