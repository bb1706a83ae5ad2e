/** So long a release may hold its turn; what takes longer is overtaken, and finds out when it commits. */
const HELD_MS = 5_000;

interface Held {
  turn: number;
  ended: Promise<void>;
  end(): void;
}

/**
 * Lets the packs of an aircraft be sealed one after another. Sealing is the dearest thing that the service does, and of many releases at
 * once only the first comes to anything. A turn that nobody gives back, as when the Worker ended over it, ends by itself.
 */
export class SealingTurn {
  #held: Held | undefined;
  #turns = 0;

  /** Until when another release has the turn; undefined while it is free. Of many that waited, the next one to look may take it. */
  get held(): Promise<void> | undefined {
    return this.#held?.ended;
  }

  /** Takes the turn, which was just found free. */
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

  /** Gives a turn back; one that ended by itself is let be. */
  leave(turn: number): void {
    if (this.#held?.turn === turn) this.#held.end();
  }
}
