import pako from 'pako';
import { joined } from '../bytes/byte-text.ts';

// pako and not the zlib of the platform: zlib would be faster, but its bytes differ between machines.

// A third of the time of the usual level 6, for a file that is some 9 % larger.
const LEVEL = 2;

const WAITING_BYTES = 65_536;

/** Deflates bytes for FlateDecode (RFC 1950). In JavaScript throughout, so that every machine gives the same bytes. */
export function deflate(bytes: Uint8Array): Uint8Array {
  return pako.deflate(bytes, { level: LEVEL });
}

/** Deflates data piece by piece, so that it is never whole in memory. */
export class Deflation {
  readonly #pieces: Uint8Array[] = [];
  readonly #packing = new pako.Deflate({ level: LEVEL });
  // Pushing every few bytes separately would take longer than packing them.
  readonly #waiting = new Uint8Array(WAITING_BYTES);
  #waits = 0;

  constructor() {
    this.#packing.onData = (piece): void => {
      this.#pieces.push(piece as Uint8Array);
    };
  }

  put(bytes: Uint8Array): void {
    for (let at = 0; at < bytes.length; ) {
      const part = bytes.subarray(at, at + WAITING_BYTES - this.#waits);
      this.#waiting.set(part, this.#waits);
      this.#waits += part.length;
      at += part.length;
      if (this.#waits === WAITING_BYTES) this.#pack(false);
    }
  }

  /** Returns all packed data. */
  end(): Uint8Array {
    this.#pack(true);
    return joined(this.#pieces);
  }

  #pack(isLast: boolean): void {
    this.#packing.push(this.#waiting.slice(0, this.#waits), isLast);
    this.#waits = 0;
  }
}
