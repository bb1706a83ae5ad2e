import { emptySlot } from '../../worker/seal/slot.ts';

/** A file of the outward form of a pack: stretches with names, and a slot among them. */
export function sampleFile(): { file: Uint8Array; parts: { name: string; start: number; end: number }[] } {
  const slot = new TextDecoder().decode(emptySlot(1900));
  const [first, second] = ['%PDF-1.7\npage one, mass 325.9 kg\n', '\nendstream\npage two, arm 1650.3 mm\n%%EOF\n'];
  const text = `${first}stream\n${slot}${second}`;
  const start = text.indexOf('page two');
  const parts = [
    { name: 'page 1', start: 9, end: first.length },
    { name: 'page 2', start, end: start + 'page two, arm 1650.3 mm'.length },
  ];
  return { file: new TextEncoder().encode(text), parts };
}
