import fc from 'fast-check';
import { LANGUAGES } from '../../../../worker/core/text/languages.ts';
import { PAPER_NAMES } from '../../../../worker/core/units/paper-size.ts';
import { ARM_UNITS, MASS_UNITS, VOLUME_UNITS } from '../../../../worker/core/units/quantity.ts';
import { changed, equipment } from './changes.ts';
import { type AnyShape, shape, shaped } from './shape.ts';
import { sound, soundEquipment, soundTraction } from './sound.ts';
import { traction, withTraction } from './traction.ts';
import { defined, optional } from './values.ts';
import { weighed, weighing } from './weighings.ts';

/** What is put in place of the same in a record of the fixtures. */
export const replacement = fc.record({
  shape,
  weighing: optional(weighing),
  equipment: optional(equipment),
  traction: optional(traction),
  units: fc.record({
    mass: fc.constantFrom(...MASS_UNITS),
    arm: fc.constantFrom(...ARM_UNITS),
    volume: fc.constantFrom(...VOLUME_UNITS),
  }),
  paper: fc.constantFrom(...PAPER_NAMES),
  language: fc.constantFrom(...LANGUAGES),
  /** Whether everything has a lateral arm that can have one, some things have, or none. */
  lateral: fc.constantFrom('all', 'some', 'none'),
  isSound: fc.boolean(),
});

type Replacement = typeof replacement extends fc.Arbitrary<infer Value> ? Value : never;

interface Posted extends Record<string, unknown> {
  workshop: object;
  visit: { arrivedAt: string };
  people: { id: string }[];
  aircraft: object;
  baseline?: Record<string, unknown>;
  weighing?: Record<string, unknown> & { points: { readings: number[] }[] };
  modifications?: Record<string, unknown>[];
  electrical?: object;
  compass?: object;
  release: { by: string };
}

/** A record of the fixtures with another aircraft, weighed and changed in other ways. */
export function replaced(own: Record<string, unknown>, drawn: Replacement): Record<string, unknown> {
  const visit = own as Posted;
  const wanted = drawn.isSound ? soundly(visit, drawn) : drawn;
  const { units, paper, language, shape: any } = wanted;
  const { aircraft, schedules } = shaped(visit.aircraft, any, visit.release.by);
  const record = defined({
    ...visit,
    units,
    workshop: { ...visit.workshop, paper, language },
    aircraft,
    ...changes(visit, wanted, schedules),
    weighing: visit.weighing && weighingOf(visit.weighing, any, wanted.weighing),
    electrical: wanted.traction ? withTraction(visit.electrical, wanted.traction, doneBy(visit)) : visit.electrical,
  });
  const balanced = wanted.lateral === 'all' ? record : onCentreLine(record, wanted.lateral === 'some');
  return { ...balanced, aircraft: { ...balanced.aircraft, airframe: airframeOf(balanced) } };
}

function soundly({ weighing: own, baseline, compass }: Posted, drawn: Replacement): Replacement {
  const massOf = (readings: readonly number[]): number =>
    readings.reduce((sum, each) => sum + each, 0) / readings.length;
  const weighedMass = own?.points.reduce((sum, { readings }) => sum + massOf(readings), 0);
  const { traction: circuit, equipment: items, shape: any } = drawn;
  return {
    ...drawn,
    shape: sound(any, { weighedMass, hasPapers: baseline !== undefined }),
    weighing: undefined,
    equipment: items && soundEquipment(items),
    // A change of the electrical system asks for a swing, which not every record has.
    traction: circuit && compass && soundTraction(circuit),
    lateral: any.ownLimits.lateralEnvelope ? 'all' : drawn.lateral,
  };
}

function doneBy({ people, release, visit }: Posted): { by: string; secondBy: string; at: string } {
  const by = people.find(({ id }) => id !== release.by)?.id ?? release.by;
  return { by, secondBy: release.by, at: visit.arrivedAt };
}

/** The papers with an empty aircraft as light and as far aft as wanted, and other equipment. */
function changes(
  { baseline, modifications }: Posted,
  { equipment: drawn, shape: { emptyMass, emptyArm, emptyLateralArm, configuration } }: Replacement,
  schedules: readonly object[],
): { baseline?: object; modifications?: object[] | undefined } {
  if (!baseline) return {};
  const own = drawn && modifications ? changed(drawn) : undefined;
  const { emptyMoment: _, emptyLateralMoment: _lateral, engineSerial: _engine, ...papers } = baseline;
  return {
    baseline: defined({
      ...papers,
      emptyMass,
      emptyArm,
      emptyLateralArm,
      configuration: configuration && 'worked',
      schedules: schedules.length > 0 ? [...schedules] : undefined,
      ...(own && { equipment: own.equipment }),
    }),
    modifications: modifications?.map(({ convertsTo: _to, ...each }, index) =>
      own ? { ...each, changes: index === 0 ? own.changes : [] } : each,
    ),
  };
}

function weighingOf(
  own: NonNullable<Posted['weighing']>,
  { emptyArm, emptyLateralArm, stations }: AnyShape,
  drawn: Replacement['weighing'],
): object {
  if (drawn) return weighed(own, stations, { emptyArm, drawn });
  const points = own.points.map((point, index) => ({
    ...point,
    arm: emptyArm + 10 * index,
    ...(emptyLateralArm !== undefined && { lateralArm: emptyLateralArm }),
  }));
  const { fuelAboard: _, ...kept } = own;
  return { ...kept, points };
}

const LATERAL = new Set(['lateralArm', 'emptyLateralArm', 'emptyLateralMoment']);

/** The record without lateral arms, or without every other one; corners of limits keep theirs. */
function onCentreLine<Of extends object>(record: Of, isEveryOther: boolean): Of {
  let count = 0;
  const without = (part: unknown): unknown => {
    if (Array.isArray(part)) return part.map(without);
    if (typeof part !== 'object' || part === null) return part;
    const isCorner = !('name' in part || 'emptyMass' in part || 'volume' in part);
    return Object.fromEntries(
      Object.entries(part)
        .filter(([key]) => isCorner || !LATERAL.has(key) || (isEveryOther && count++ % 2 === 0))
        .map(([key, each]) => [key, without(each)]),
    );
  };
  return without(record) as Of;
}

const ARMS = new Set(['arm', 'emptyArm', 'forward', 'aft', 'leadingEdgeArm', 'oilArm']);

/** The extent of an airframe that has every arm of a record in it. */
function airframeOf(record: object): { forward: number; aft: number } {
  const arms = [...armsIn(record)];
  const [least, most] = arms.reduce(([low, high], each) => [Math.min(low, each), Math.max(high, each)], [0, 0]);
  return { forward: (least ?? 0) - 300, aft: (most ?? 0) + 8000 };
}

function* armsIn(part: unknown): Generator<number> {
  if (typeof part !== 'object' || part === null) return;
  for (const [key, each] of Object.entries(part)) {
    if (typeof each === 'number' && ARMS.has(key)) yield each;
    else yield* armsIn(each);
  }
}
