import type { Part } from '../print-job.ts';

const OBJECT = /(?:^|[\r\n])(\d+) 0 obj\b/g;

/**
 * Where named objects stand in a finished file.
 *
 * @param named names of objects by their reference, such as `12 0 R`
 */
export function partsIn(file: Uint8Array, named: ReadonlyMap<string, string>): Part[] {
  const text = new TextDecoder('latin1').decode(file);
  const names = new Map([...named].map(([reference, name]) => [Number.parseInt(reference, 10), name]));
  const parts: Part[] = [];
  for (const match of text.matchAll(OBJECT)) {
    const number = Number(match[1]);
    const name = names.get(number);
    if (name === undefined) continue;
    // The first place is the object; the same letters further on could only stand in the bytes of some stream.
    names.delete(number);
    const end = text.indexOf('endobj', text.indexOf('endstream', match.index));
    if (end > 0) parts.push({ name, start: match.index, end });
  }
  return parts;
}
