const FIRST_BYTES = 4096;

/** Bytes that are written one after another, in memory at most twice what they come to. */
export class GrowingBytes {
  #bytes = new Uint8Array(FIRST_BYTES);
  length = 0;

  #makeRoom(more: number): void {
    const needed = this.length + more;
    if (needed <= this.#bytes.length) return;
    const grown = new Uint8Array(Math.max(needed, 2 * this.#bytes.length));
    grown.set(this.#bytes.subarray(0, this.length));
    this.#bytes = grown;
  }

  put(byte: number): void {
    this.#makeRoom(1);
    this.#bytes[this.length++] = byte;
  }

  putAll(bytes: Uint8Array): void {
    this.#makeRoom(bytes.length);
    this.#bytes.set(bytes, this.length);
    this.length += bytes.length;
  }

  /** The same byte so many times. */
  fill(byte: number, count: number): void {
    this.#makeRoom(count);
    this.#bytes.fill(byte, this.length, this.length + count);
    this.length += count;
  }

  /** What was written so far, without a copy. */
  taken(): Uint8Array {
    return this.#bytes.subarray(0, this.length);
  }
}
