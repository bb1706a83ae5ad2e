import fc from 'fast-check';
import { type AnyStation, limits, limitsOver } from './stations.ts';
import { arm, bits, chosen, defined, mass, massOrNone, name, optional, tenths } from './values.ts';

/** What the lower edge is. */
const lowerEdge = optional(fc.constantFrom('limit', 'end-of-drawing'));

/** Levels of mass from a lowest one up, each with a forward and an aft end. */
const levels = (ends: { from: number; to: number; span: number }, most = 20) =>
  fc
    .tuple(
      tenths(50, 400),
      fc.array(fc.record({ step: tenths(1, 120), forward: tenths(ends.from, ends.to), span: tenths(1, ends.span) }), {
        minLength: 2,
        maxLength: most,
      }),
    )
    .map(([lowest, drawn]) => {
      let at = lowest;
      return drawn.map(({ step, forward, span }) => {
        at += step;
        return { massAt: at, forward, aft: forward + span };
      });
    });

/** Corners round an area, up one side and down the other. */
const around = <Corner>(
  sides: readonly { massAt: number; forward: number; aft: number }[],
  corner: (massAt: number, at: number) => Corner,
): Corner[] => [
  ...sides.map(({ massAt, forward }) => corner(massAt, forward)),
  ...sides.toReversed().map(({ massAt, aft }) => corner(massAt, aft)),
];

const byArm = levels({ from: -200, to: 900, span: 900 }).map((sides) =>
  around(sides, (massAt, at): object => ({ mass: massAt, arm: at })),
);
const byChord = levels({ from: -60, to: 40, span: 90 }).map((sides) =>
  around(sides, (massAt, at): object => ({ mass: massAt, chordPercent: at })),
);

/** Corners that bound nothing, as somebody might leave them. */
const unfinished = fc.array(fc.record({ mass: massOrNone(900), arm: optional(arm) }).map(defined), {
  minLength: 3,
  maxLength: 6,
});

const corners = fc.oneof(
  { weight: 5, arbitrary: byArm },
  { weight: 5, arbitrary: byChord },
  { weight: 1, arbitrary: unfinished },
);

/** One side of an envelope by equations that meet, rising from a given mass. */
const side = (from: number, to: number) =>
  fc
    .array(fc.record({ share: tenths(1, 90), at: tenths(from, to), slope: optional(tenths(-80, 80)) }), {
      minLength: 1,
      maxLength: 20,
    })
    .map((pieces) => (lowest: number, highest: number): object[] => {
      const whole = pieces.reduce((sum, piece) => sum + piece.share, 0);
      let at = lowest;
      return pieces.map((piece, index) => {
        const end = index === pieces.length - 1 ? highest : at + ((highest - lowest) * piece.share) / whole;
        const equation = {
          ...{ fromMass: at, toMass: end, arm: piece.at, atMass: at },
          ...(piece.slope !== undefined && { armChange: piece.slope, perMass: 100 }),
        };
        at = end;
        return equation;
      });
    });

const equations = fc
  .record({ lowest: tenths(0, 400), span: tenths(5, 900), forward: side(-200, 950), aft: side(850, 2500) })
  .map(({ lowest, span, forward, aft }): object => ({
    forward: forward(lowest, lowest + span),
    aft: aft(lowest, lowest + span),
  }));

const lateralByMass = levels({ from: -900, to: 100, span: 900 }).map((sides): object => ({
  by: 'mass',
  corners: around(sides, (massAt, at) => ({ mass: massAt, lateralArm: at })),
}));

/** A box with its corners cut, as a diagram over both arms has it; now and then any corners. */
const lateralByArm = fc
  .oneof(
    { weight: 4, arbitrary: fc.record({ from: tenths(-500, 3000), span: tenths(1, 4000), half: tenths(1, 900) }) },
    { weight: 1, arbitrary: fc.array(fc.tuple(arm, tenths(-900, 900)), { minLength: 3, maxLength: 40 }) },
  )
  .map((drawn): object => {
    if (Array.isArray(drawn))
      return { by: 'arm', corners: drawn.map(([at, across]) => ({ arm: at, lateralArm: across })) };
    const { from, span, half } = drawn;
    const corner = (along: number, across: number): object => ({ arm: from + along * span, lateralArm: across * half });
    const [fore, aft] = [
      [corner(0, -0.6), corner(0.2, -1)],
      [corner(1, -1), corner(1, 0.8)],
    ] as const;
    return { by: 'arm', corners: [...fore, ...aft, corner(0.2, 1), corner(0, 0.6)] };
  });

const category = fc.record({
  name: name(40),
  maximumMass: optional(mass(2000)),
  envelope: corners,
  envelopeLowerEdge: lowerEdge,
  unused: optional(bits),
});

/** Limits that an aircraft or one of its configurations may have of its own. */
export const ownLimits = fc.record({
  maximumLandingMass: optional(mass(2000)),
  maximumZeroFuelMass: optional(mass(2000)),
  maximumEmptyMass: optional(mass(1000)),
  maximumMassWithExternalLoad: optional(mass(3000)),
  minimumMass: optional(mass(600)),
  nonLifting: optional(fc.record({ maximumMass: massOrNone(600), liftingPartsMass: massOrNone(300) })),
  emptyRange: optional(fc.tuple(arm, tenths(1, 900)).map(([forward, span]) => ({ forward, aft: forward + span }))),
  limitsOfBalance: fc.oneof(
    { weight: 3, arbitrary: corners.map((envelope): object => ({ envelope })) },
    { weight: 1, arbitrary: equations.map((envelopeEquations): object => ({ envelopeEquations })) },
    { weight: 1, arbitrary: fc.constant({}) },
  ),
  envelopeLowerEdge: lowerEdge,
  lateralEnvelope: optional(fc.oneof(lateralByMass, lateralByArm)),
  categories: optional(fc.array(category, { maxLength: 6 })),
  limitsFrom: optional(fc.constantFrom('flight-manual', 'workshop')),
  loadingLimits: limits,
});

export type AnyLimits = typeof ownLimits extends fc.Arbitrary<infer Value> ? Value : never;

/** The limits as posted, over stations that there are. */
export function ownLimitsOver(
  places: readonly AnyStation[],
  { limitsOfBalance, categories, loadingLimits, ...own }: AnyLimits,
): object {
  const all = places.map(({ id }) => id);
  return defined({
    ...own,
    ...limitsOfBalance,
    categories: categories?.map(({ unused, ...each }, index) =>
      defined({
        id: `category-${index}`,
        ...each,
        unusedStations: unused === undefined ? undefined : chosen(all, unused, 40),
      }),
    ),
    loadingLimits: limitsOver(places, loadingLimits),
  });
}
