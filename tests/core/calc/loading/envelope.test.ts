import { describe, expect, test } from 'vitest';
import { armOn, type Envelope, envelopeOf } from '../../../../worker/core/calc/loading/envelope.ts';

const corner = (armMm: number, massKg: number): { armMm: number; massKg: number } => ({ armMm, massKg });

/** Forward and aft limit at one mass; undefined where the envelope does not reach. */
function limitsAt(envelope: Envelope, massKg: number): { forwardMm: number; aftMm: number } | undefined {
  const index = envelope.forward.findIndex(({ fromKg, toKg }) => massKg >= fromKg && massKg <= toKg);
  const front = envelope.forward[index];
  const rear = envelope.aft[index];
  return front && rear ? { forwardMm: armOn(front, massKg), aftMm: armOn(rear, massKg) } : undefined;
}

describe('envelopeOf()', () => {
  const corners = [corner(1640, 340), corner(1640, 480), corner(1675, 600), corner(1800, 600), corner(1800, 340)];

  test('gives both limits at any mass, whichever way round the corners run', () => {
    for (const order of [corners, corners.toReversed(), [...corners.slice(2), ...corners.slice(0, 2)]]) {
      const envelope = envelopeOf(order);
      expect(envelope && limitsAt(envelope, 540)).toEqual({ forwardMm: 1657.5, aftMm: 1800 });
      expect(envelope && limitsAt(envelope, 340)).toEqual({ forwardMm: 1640, aftMm: 1800 });
      expect(envelope && limitsAt(envelope, 600)).toEqual({ forwardMm: 1675, aftMm: 1800 });
      expect(envelope && limitsAt(envelope, 600.1)).toBeUndefined();
      expect(envelope && limitsAt(envelope, 339.9)).toBeUndefined();
    }
  });

  test('takes an envelope that comes to a point', () => {
    const envelope = envelopeOf([corner(100, 300), corner(150, 600), corner(200, 300)]);
    expect(envelope && limitsAt(envelope, 450)).toEqual({ forwardMm: 125, aftMm: 175 });
    expect(envelope && limitsAt(envelope, 600)).toEqual({ forwardMm: 150, aftMm: 150 });
  });

  test('refuses what has no area, crosses itself, or is crossed more than twice', () => {
    expect(envelopeOf([corner(0, 300), corner(10, 300), corner(20, 300)])).toBeUndefined();
    expect(envelopeOf([corner(0, 300), corner(10, 600), corner(0, 600), corner(10, 300)])).toBeUndefined();
    const notched = [corner(0, 300), corner(0, 600), corner(5, 400), corner(10, 600), corner(10, 300)];
    expect(envelopeOf(notched)).toBeUndefined();
  });
});
