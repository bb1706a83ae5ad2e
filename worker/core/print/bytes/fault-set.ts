import type { Fault } from '../../text/faults.ts';

/** Faults in the order of detection, each once. */
export class FaultSet {
  readonly #faults = new Map<string, Fault>();

  add(fault: Fault): void {
    const key = JSON.stringify(fault);
    if (!this.#faults.has(key)) this.#faults.set(key, fault);
  }

  [Symbol.iterator](): IterableIterator<Fault> {
    return this.#faults.values();
  }
}
