const FIRST_BYTES = 4096;

/** Growing buffer, in memory up to twice its length. */
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

  /** Appends a number of equal bytes. */
  fill(byte: number, count: number): void {
    this.#makeRoom(count);
    this.#bytes.fill(byte, this.length, this.length + count);
    this.length += count;
  }

  /** Returns the bytes written so far, without a copy. */
  taken(): Uint8Array {
    return this.#bytes.subarray(0, this.length);
  }
}
