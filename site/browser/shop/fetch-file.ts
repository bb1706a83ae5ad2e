import { element } from '../element.ts';

/** Saves content as a file with the browser. */
export function fetchFile(content: Uint8Array<ArrayBuffer> | string, name: string, type: string): void {
  const href = URL.createObjectURL(new Blob([content], { type }));
  element('a', { href, download: name }).click();
  // The browser has read it after this delay.
  setTimeout(() => URL.revokeObjectURL(href), 1000);
}
