import { emptySlot, type Slot, slotAt } from '../../../worker/core/seal/slot.ts';

export interface SampleFile {
  file: Uint8Array;
  places: { slot: Slot; parts: { name: string; start: number; end: number }[] };
}

/**
 * A file of the outward form of a pack: stretches with names, and a slot among them.
 *
 * @param brought what stands before the slot, as if it were in a photograph
 */
export function sampleFile(brought = ''): SampleFile {
  const slot = new TextDecoder().decode(emptySlot(1900));
  const [first, second] = ['%PDF-1.7\npage one, mass 325.9 kg\n', '\nendstream\npage two, arm 1650.3 mm\n%%EOF\n'];
  const before = `${first}${brought}stream\n`;
  const text = `${before}${slot}${second}`;
  const start = text.indexOf('page two');
  const parts = [
    { name: 'page 1', start: 9, end: first.length },
    { name: 'page 2', start, end: start + 'page two, arm 1650.3 mm'.length },
  ];
  const at = { start: before.length, end: before.length + slot.length };
  return { file: new TextEncoder().encode(text), places: { slot: slotAt(at), parts } };
}
