import { reduceWeighing, type WeighingResult } from '../../worker/core/calc/weighing/weighing.ts';
import type { Circuit, Electrical, Weighing } from '../../worker/core/record/visit.ts';
import { readVisit } from '../published/read-visit.ts';

/** The demo visit, from which examples take their numbers where nobody has published any. */
export const DEMO = readVisit('nose-wheel-full');

/** Its weighing, and what that comes to. */
export function demoWeighing(): { weighing: Weighing; result: WeighingResult } {
  const { weighing } = DEMO;
  const result = weighing && reduceWeighing(DEMO, weighing);
  if (!result) throw new Error('the demo visit weighs an aircraft');
  return { weighing, result };
}

/** Its electrical part. */
export function demoElectrical(): Electrical {
  if (!DEMO.electrical) throw new Error('the demo visit has an electrical part');
  return DEMO.electrical;
}

/** One of its circuits. */
export function demoCircuit(id: string): Circuit {
  const circuit = demoElectrical().circuits.find((each) => each.id === id);
  if (!circuit) throw new Error(`the demo visit has the circuit ${id}`);
  return circuit;
}
