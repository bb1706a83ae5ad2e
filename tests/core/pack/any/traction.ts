import fc from 'fast-check';
import { defined, name, optional, tenths } from './values.ts';

const volts = tenths(60, 2000);
const megohms = fc.oneof(tenths(0, 20), fc.constant(0.0001), tenths(0, 1_000_000));

/** The circuit of an electric drive, with any of its checks. */
export const traction = fc.record({
  nominalV: volts,
  isWatched: fc.boolean(),
  isIsolated: fc.boolean(),
  insulation: optional(
    fc.record({ resistanceMohm: megohms, limitMohm: megohms, testV: volts, instrument: optional(name(80)) }),
  ),
  isOpened: optional(fc.boolean()),
  bus: name(80),
  load: name(80),
});

export type AnyTraction = typeof traction extends fc.Arbitrary<infer Value> ? Value : never;

/** The electrical part as posted: that of the record with such a circuit, or one bus with one load beside it. */
export function withTraction(
  own: object | undefined,
  { nominalV, isWatched, isIsolated, insulation, isOpened, bus, load }: AnyTraction,
  { by, secondBy, at }: { by: string; secondBy: string; at: string },
): object {
  const circuit = defined({
    nominalV,
    isolation: isIsolated ? defined({ by, secondBy: isWatched ? secondBy : undefined, at }) : undefined,
    insulation: insulation && defined({ ...insulation, by, at }),
    disconnect: isOpened === undefined ? undefined : { isOpened, by, at },
  });
  return { ...(own ?? smallSystem(bus, load)), traction: circuit };
}

const smallSystem = (bus: string, load: string): object => ({
  system: '14-volt',
  altitudeFt: 10_000,
  sources: [{ id: 'converter', name: bus, ratedA: 20 }],
  buses: [{ id: 'main', name: bus, isAliveOnBattery: true }],
  loads: [
    {
      ...{ id: 'L1', name: load, change: 'kept', duty: 'continuous', isEssential: true, bus: 'main' },
      amps: { taxi: 1, takeOff: 1, cruise: 1, landing: 1 },
    },
  ],
  circuits: [],
});
