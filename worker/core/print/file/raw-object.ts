import { PDFObject } from '#pdf-lib';

/** A PDF object already in text form. Thousands of structure elements are built as text many times faster than as dictionaries. */
export class RawObject extends PDFObject {
  readonly #text: string;

  /** @param text a complete PDF object in ASCII */
  constructor(text: string) {
    super();
    this.#text = text;
  }

  override toString(): string {
    return this.#text;
  }

  override sizeInBytes(): number {
    return this.#text.length;
  }

  override copyBytesInto(buffer: Uint8Array, offset: number): number {
    for (let i = 0; i < this.#text.length; i++) buffer[offset + i] = this.#text.charCodeAt(i);
    return this.#text.length;
  }
}
