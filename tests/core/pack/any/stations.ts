import fc from 'fast-check';
import { arm, bits, chosen, defined, lateralArm, massOrNone, name, optional, rare, share, tenths } from './values.ts';

/** A station as posted; what is not of its kind is absent. */
export interface AnyStation {
  id: string;
  kind: string;
  name: string;
  arm?: number | undefined;
  lateralArm?: number | undefined;
  armByVolume?: { volume: number; arm: number; lateralArm?: number | undefined }[] | undefined;
  minimumMass?: number | undefined;
  maximumMass?: number;
  capacity?: number;
  unusable?: number;
  leastUsable?: number | undefined;
  density?: number;
  matched?: { to: string[]; table: object[] } | undefined;
}

const loadStation = (kinds: readonly string[]) =>
  fc.record({
    kind: fc.constantFrom(...kinds),
    name: name(40),
    arm,
    lateralArm: optional(lateralArm),
    isNonLifting: optional(fc.boolean()),
    minimumMass: optional(massOrNone(60)),
    maximumMass: massOrNone(200),
  });

const armTable = fc
  .tuple(
    tenths(-300, 3000),
    fc.array(fc.tuple(tenths(1, 60), tenths(-40, 40), optional(lateralArm)), { minLength: 1, maxLength: 29 }),
  )
  .map(([first, steps]) => {
    const rows: { volume: number; arm: number; lateralArm?: number | undefined }[] = [{ volume: 0, arm: first }];
    for (const [volume, drift, across] of steps) {
      const last = rows.at(-1) ?? { volume: 0, arm: first };
      rows.push({ volume: last.volume + volume, arm: last.arm + drift, lateralArm: across });
    }
    return rows;
  });

const tank = {
  name: name(40),
  lateralArm: optional(lateralArm),
  isNonLifting: optional(fc.boolean()),
  capacity: tenths(5, 500),
  place: fc.oneof(
    { weight: 2, arbitrary: arm.map((only): object => ({ arm: only })) },
    { weight: 1, arbitrary: armTable.map((armByVolume): object => ({ armByVolume })) },
  ),
};

const fuelStation = fc
  .record({
    ...tank,
    unusable: fc.oneof({ weight: 6, arbitrary: tenths(0, 4) }, { weight: 1, arbitrary: tenths(0, 600) }),
    leastUsable: optional(tenths(0, 4)),
    density: fc.constantFrom(0.72, 0.8, 6, 6.7),
    burnOrder: optional(fc.integer({ min: 1, max: 4 })),
  })
  .map(({ place, ...of }) => ({ kind: 'fuel', ...of, ...place }));

/** A table of tail ballast, which mostly rises with the water. */
const matched = fc.record({
  bits,
  rows: fc.array(fc.tuple(tenths(0, 60), tenths(-1, 4)), { minLength: 2, maxLength: 30 }),
});

const waterStation = fc
  .record({
    ...tank,
    density: fc.constantFrom(1, 8.34),
    isDumpable: optional(fc.boolean()),
    dumpRate: optional(tenths(0.1, 3000)),
    matched: optional(matched),
  })
  .map(({ place, ...of }) => ({ kind: 'water', ...of, ...place }));

const SEATS = ['pilot', 'passenger'];
const PLACES = ['pilot', 'passenger', 'baggage', 'locker', 'ballast', 'external'];

const station = fc.oneof(
  { weight: 4, arbitrary: loadStation(PLACES) },
  { weight: 1, arbitrary: fuelStation },
  { weight: 1, arbitrary: waterStation },
);

/** One to forty stations, numbered as a record names them, a pilot among them nearly always. */
export const stations: fc.Arbitrary<AnyStation[]> = fc
  .tuple(
    fc.oneof({ weight: 9, arbitrary: loadStation(['pilot']) }, { weight: 1, arbitrary: loadStation(SEATS) }),
    fc.oneof(
      { weight: 3, arbitrary: fc.array(station, { maxLength: 6 }) },
      { weight: 1, arbitrary: fc.array(station, { minLength: 6, maxLength: 39, size: 'max' }) },
    ),
  )
  .map(([first, others]) => matchedToWater([first, ...others]));

function matchedToWater(drawn: readonly object[]): AnyStation[] {
  const numbered = drawn.map(
    (each, index) => ({ id: `station-${index}`, ...each }) as AnyStation & { matched?: unknown },
  );
  const water = numbered.filter(({ kind }) => kind === 'water').map(({ id }) => id);
  return numbered.map((each) => {
    const others = water.filter((id) => id !== each.id);
    const drawnTable = each.matched as { bits: number; rows: [number, number][] } | undefined;
    const table = drawnTable && others.length > 0 ? risingTable(drawnTable.rows) : undefined;
    const to = chosen(others, drawnTable?.bits ?? 0, 8);
    return defined({ ...each, matched: table && { to, table } }) as AnyStation;
  });
}

function risingTable(rows: readonly (readonly [number, number])[]): { mass: number; ballast: number }[] {
  let [at, ballast] = [0, 0];
  return rows.map(([step, more], index) => {
    if (index > 0) [at, ballast] = [at + step, Math.max(0, ballast + more)];
    return { mass: at, ballast };
  });
}

/** Limits over stations: nested as most manuals have them, or over any of them, and some only while a place is taken. */
export const limits = fc.array(
  fc.record({
    text: name(200),
    share,
    isNested: fc.boolean(),
    bits,
    maximumMass: massOrNone(400),
    when: rare(fc.record({ bits, above: massOrNone(80) })),
  }),
  { maxLength: 20 },
);

type AnyLimits = typeof limits extends fc.Arbitrary<infer Value> ? Value : never;

/** The limits as posted, over stations that there are. */
export function limitsOver(places: readonly AnyStation[], drawn: AnyLimits): object[] {
  const all = places.map(({ id }) => id);
  const load = places.filter(({ kind }) => kind !== 'fuel' && kind !== 'water').map(({ id }) => id);
  return drawn.map(({ share: part, isNested, bits: any, when, ...limit }, index) =>
    defined({
      id: `limit-${index}`,
      ...limit,
      stations: isNested ? load.slice(0, 1 + Math.floor(part * (load.length - 1))) : chosen(all, any, 40),
      when: when && { stations: chosen(all, when.bits, 40), above: when.above },
    }),
  );
}

/** All arms at which something can be aboard. */
export function armsOf({ arm: only, armByVolume }: AnyStation): number[] {
  if (armByVolume) return armByVolume.map((row) => row.arm);
  return only === undefined ? [] : [only];
}

/** The most that a station can carry. */
export function mostOf({ maximumMass, capacity, density }: AnyStation): number {
  return maximumMass ?? (capacity ?? 0) * (density ?? 0);
}
