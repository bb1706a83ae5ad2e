import type { Wiring } from '../../record/visit.ts';
import { type HarnessMass, harnessMass } from './harness-mass.ts';
import { type Net, netsOf } from './nets.ts';
import { type PinGraph, pinGraph } from './pin-graph.ts';

/** Results of the wiring. */
export interface WiringResult {
  graph: PinGraph;
  nets: Net[];
  harness: HarnessMass;
}

/** Returns pin graph, nets and harness mass of a visit. */
export function wiringResults(wiring: Wiring): WiringResult {
  const graph = pinGraph(wiring);
  return { graph, nets: netsOf(wiring, graph), harness: harnessMass(wiring) };
}
