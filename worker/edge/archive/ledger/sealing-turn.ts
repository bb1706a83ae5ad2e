/** Time limit of a turn; a slower release is overtaken, and detects this when it commits. */
const HELD_MS = 5_000;

interface Held {
  turn: number;
  ended: Promise<void>;
  end(): void;
}

/**
 * Queue in which the packs of an aircraft are sealed one after another. Sealing costs more than any other operation of
 * the service, and of many simultaneous releases only the first succeeds. A turn that is not given back, as when the
 * Worker was stopped, times out.
 */
export class SealingTurn {
  #held: Held | undefined;
  #turns = 0;

  /**
   * End of the turn of another release; undefined while it is free. Of several that waited, the first to check may take
   * it.
   */
  get held(): Promise<void> | undefined {
    return this.#held?.ended;
  }

  /** Takes the turn, which was found free. */
  take(): number {
    const turn = ++this.#turns;
    const { promise: ended, resolve } = Promise.withResolvers<void>();
    const end = (): void => {
      clearTimeout(timer);
      if (this.#held?.turn === turn) this.#held = undefined;
      resolve();
    };
    const timer = setTimeout(end, HELD_MS);
    this.#held = { turn, ended, end };
    return turn;
  }

  /** Gives a turn back; a turn that timed out is ignored. */
  leave(turn: number): void {
    if (this.#held?.turn === turn) this.#held.end();
  }
}
