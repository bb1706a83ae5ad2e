import { element } from '../element.ts';

/** Hands a file over to the browser under a name. */
export function fetchFile(content: Uint8Array<ArrayBuffer> | string, name: string, type: string): void {
  const href = URL.createObjectURL(new Blob([content], { type }));
  element('a', { href, download: name }).click();
  // The browser has taken it by the next turn.
  setTimeout(() => URL.revokeObjectURL(href), 1000);
}
