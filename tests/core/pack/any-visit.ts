import fc from 'fast-check';
import { type Assessed, assess, draftPdf, seal } from '../../../worker/core/core.ts';
import type { ReleasedVisit } from '../../../worker/core/gate/release.ts';
import { packContext } from '../../../worker/core/pack/context.ts';
import { packDocuments } from '../../../worker/core/pack/pack-documents.ts';
import { printPack } from '../../../worker/core/pipeline/print-pack.ts';
import { LANGUAGES } from '../../../worker/core/text/languages.ts';
import { PAPER_NAMES } from '../../../worker/core/units/paper-size.ts';
import { ARM_UNITS, MASS_UNITS, VOLUME_UNITS } from '../../../worker/core/units/quantity.ts';
import { FIXTURE_FILES } from '../../fixture-files.ts';
import { RELEASABLE_AT } from '../gate/assess-record.ts';
import { posted } from './fixture.ts';
import { freeTexts, withAcceptedTexts } from './hostile-text.ts';

/** Words as people write them into records, from none that can be broken to many. */
const WORDS = [
  'W'.repeat(60),
  'Donaudampfschifffahrtsgesellschaft',
  'rear-left-hand-locker-behind-the-bulkhead',
  'Ü ß é „quoted“ 1/2 × 3',
  'i l i l i l i l i l',
  'Baggage compartment behind the rear seats, starboard side',
] as const;

const longText = (length: number): fc.Arbitrary<string> =>
  fc.array(fc.constantFrom(...WORDS), { minLength: 1, maxLength: 8 }).map((words) =>
    words
      .join(' ')
      .repeat(Math.ceil(length / 10))
      .slice(0, length)
      .trim(),
  );

/** A name of any length that the schema allows, the longest as often as any other. */
const name = (most: number): fc.Arbitrary<string> =>
  fc.oneof(
    fc.constantFrom('Left seat', 'Rear tank', 'A'),
    longText(most),
    fc.integer({ min: 1, max: most }).chain(longText),
  );

const tenths = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: Math.round(min * 10), max: Math.round(max * 10) }).map((value) => value / 10);
/** Mostly as on a light aircraft, now and then with as many digits as anybody could type. */
const mass = (max: number): fc.Arbitrary<number> =>
  fc.oneof({ weight: 8, arbitrary: tenths(1, max) }, { weight: 1, arbitrary: tenths(1, 999_999) });
const arm = fc.oneof({ weight: 8, arbitrary: tenths(-300, 6000) }, { weight: 1, arbitrary: tenths(-99_999, 99_999) });

const loadStation = fc.record(
  {
    kind: fc.constantFrom('pilot', 'passenger', 'baggage'),
    name: name(40),
    arm,
    minimumMass: mass(60),
    maximumMass: mass(200),
  },
  { requiredKeys: ['kind', 'name', 'arm', 'maximumMass'] },
);

const armTable = fc
  .tuple(tenths(-300, 3000), fc.array(fc.tuple(tenths(1, 60), tenths(-40, 40)), { minLength: 1, maxLength: 29 }))
  .map(([first, steps]) => {
    const rows = [{ volume: 0, arm: first }];
    for (const [volume, drift] of steps) {
      const last = rows.at(-1) ?? { volume: 0, arm: first };
      rows.push({ volume: last.volume + volume, arm: last.arm + drift });
    }
    return rows;
  });

const fuelStation = fc
  .record({
    name: name(40),
    capacity: tenths(5, 500),
    unusable: tenths(0, 4),
    density: fc.constantFrom(0.72, 0.8, 6, 6.7),
    place: fc.oneof(
      arm.map((only) => ({ arm: only })),
      armTable.map((armByVolume) => ({ armByVolume })),
    ),
  })
  .map(({ place, ...tank }) => ({ kind: 'fuel', ...tank, ...place }));

const station = fc.oneof({ weight: 3, arbitrary: loadStation }, { weight: 1, arbitrary: fuelStation });

/** One to forty stations, a pilot among them, numbered as a record names them. */
const stations = fc
  .tuple(
    loadStation,
    fc.oneof(fc.array(station, { maxLength: 6 }), fc.array(station, { minLength: 6, maxLength: 39, size: 'max' })),
  )
  .map(([pilot, others]) =>
    [{ ...pilot, kind: 'pilot' }, ...others].map((each, index) => ({ id: `station-${index}`, ...each })),
  );

/** An envelope by its levels of mass, each with a forward and an aft end. */
const envelope = fc
  .array(fc.record({ step: tenths(1, 120), forward: tenths(-200, 900), span: tenths(1, 900) }), {
    minLength: 2,
    maxLength: 20,
  })
  .chain((levels) => fc.tuple(fc.constant(levels), tenths(50, 400)))
  .map(([levels, lowest]) => {
    let at = lowest;
    const sides = levels.map(({ step, forward, span }) => {
      at += step;
      return { massAt: at, forward, aft: forward + span };
    });
    return [
      ...sides.map(({ massAt, forward }) => ({ mass: massAt, arm: forward })),
      ...sides.toReversed().map(({ massAt, aft }) => ({ mass: massAt, arm: aft })),
    ];
  });

/** Limits over the load stations from the first on, each over more of them than the one before: nested, as the gate wants. */
const limits = fc.array(
  fc.record({ text: name(200), share: fc.double({ min: 0, max: 1, noNaN: true }), maximumMass: mass(400) }),
  {
    maxLength: 20,
  },
);

const optional = <Value>(value: fc.Arbitrary<Value>): fc.Arbitrary<Value | undefined> =>
  fc.option(value, { nil: undefined });

const aircraft = fc.record({
  stations,
  limits,
  envelope: optional(envelope),
  maximumMass: mass(2000),
  maximumZeroFuelMass: optional(mass(2000)),
  maximumLandingMass: optional(mass(2000)),
  maximumEmptyMass: optional(mass(1000)),
  emptyMass: mass(800),
  emptyArm: arm,
});

const BASES = ['computed-only', 'computed-only', 'weighing-only', 'trike', 'nose-wheel-full'] as const;

const OWN = /^\/(release|workshop\/(paper|language)|aircraft\/(stations|loadingLimits|regime|envelope))/;

export type AnyVisit = { record: Record<string, unknown>; at: string; isDraft: boolean };

/** A visit of an aircraft of any shape, in any units, language and paper, with any texts, as a draft or released. */
export const anyVisit: fc.Arbitrary<AnyVisit> = fc
  .record({
    base: fc.constantFrom(...BASES),
    aircraft,
    units: fc.record({
      mass: fc.constantFrom(...MASS_UNITS),
      arm: fc.constantFrom(...ARM_UNITS),
      volume: fc.constantFrom(...VOLUME_UNITS),
    }),
    paper: fc.constantFrom(...PAPER_NAMES),
    language: fc.constantFrom(...LANGUAGES),
    texts: fc.oneof({ weight: 2, arbitrary: fc.constant(undefined) }, { weight: 1, arbitrary: longText(4000) }),
    isDraft: fc.boolean(),
    isSound: fc.boolean(),
  })
  .map(({ base, aircraft: shape, units, paper, language, texts, isDraft, isSound }) => {
    const visit = posted(base);
    const any = isSound ? sound(shape) : shape;
    const workshop = { ...(visit.workshop as object), paper, language };
    const record = withEmpty({ ...visit, units, workshop, aircraft: withShape(visit.aircraft as object, any) }, any);
    return {
      record: texts === undefined ? record : longest(record, base, texts),
      at: RELEASABLE_AT[base] ?? '',
      isDraft,
    };
  });

type AnyAircraft = typeof aircraft extends fc.Arbitrary<infer Value> ? Value : never;

/** The same aircraft with limits that it can be released under: nothing that may be loaded is outside them. */
function sound({ stations: places, ...shape }: AnyAircraft): AnyAircraft {
  const arms = [shape.emptyArm, ...places.flatMap((place) => armsOf(place))];
  const [forward, aft] = [Math.min(...arms) - 1, Math.max(...arms) + 1];
  const most = places.reduce((sum, place) => sum + mostOf(place), 0);
  const emptyMass = Math.max(shape.emptyMass, most / 2);
  const maximumMass = emptyMass + Math.max(most, emptyMass / 5);
  const corners = [
    { mass: emptyMass / 2, arm: forward },
    { mass: maximumMass, arm: forward },
    { mass: maximumMass, arm: aft },
    { mass: emptyMass / 2, arm: aft },
  ];
  const stations = places.map((place) =>
    'minimumMass' in place ? { ...place, minimumMass: 1 } : place,
  ) as typeof places;
  return {
    ...shape,
    stations,
    emptyMass,
    maximumMass,
    envelope: corners,
    maximumZeroFuelMass: undefined,
    maximumLandingMass: shape.maximumLandingMass && maximumMass - 1,
    maximumEmptyMass: undefined,
  };
}

function armsOf(place: AnyAircraft['stations'][number]): number[] {
  if ('armByVolume' in place) return (place.armByVolume as { arm: number }[]).map((row) => row.arm);
  return 'arm' in place ? [Number(place.arm)] : [];
}

function mostOf(place: AnyAircraft['stations'][number]): number {
  if ('maximumMass' in place) return Number(place.maximumMass);
  return 'capacity' in place ? Number(place.capacity) * Number(place.density) : 0;
}

function withShape(own: object, { limits: joined, emptyMass: _mass, emptyArm, ...shape }: AnyAircraft): object {
  const load = shape.stations.filter(({ kind }) => kind !== 'fuel').map(({ id }) => id);
  const loadingLimits = joined.map(({ share, ...limit }, index) => ({
    id: `limit-${index}`,
    ...limit,
    stations: load.slice(0, 1 + Math.floor(share * (load.length - 1))),
  }));
  const { envelope: _envelope, emptyRange: _range, mac: _mac, ...rest } = own as Record<string, unknown>;
  const arms = [emptyArm, ...shape.stations.flatMap(armsOf), 0];
  const airframe = { forward: Math.min(...arms) - 300, aft: Math.max(...arms) + 8000 };
  return { ...rest, ...defined(shape), airframe, loadingLimits };
}

const defined = (values: object): object =>
  Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined));

/** The record with its empty aircraft as light and as far aft as wanted: by its papers, or by where its wheels stand. */
function withEmpty(record: Record<string, unknown>, { emptyMass, emptyArm }: AnyAircraft): Record<string, unknown> {
  const { baseline, weighing } = record as {
    baseline?: Record<string, unknown>;
    weighing?: { points: { arm: number }[] };
  };
  return {
    ...record,
    ...(baseline && { baseline: { ...baseline, emptyMass, emptyArm } }),
    ...(weighing && {
      weighing: {
        ...weighing,
        points: weighing.points.map((point, index) => ({ ...point, arm: emptyArm + 10 * index })),
      },
    }),
  };
}

/** The free texts of the visits of the fixtures, but for what the release says and what the shape of the aircraft names itself. */
const FREE = new Map(BASES.map((base) => [base, freeTexts(posted(base)).filter(({ path }) => !OWN.test(path))]));

/** The record with every text as long as its field holds. */
function longest(record: Record<string, unknown>, base: (typeof BASES)[number], text: string): Record<string, unknown> {
  const texts = (FREE.get(base) ?? []).map((field) => [field, text.slice(0, field.most).trim()] as const);
  return withAcceptedTexts(record, texts) as Record<string, unknown>;
}

/** What cannot be printed of a visit: nothing, whether or not the gate would release it. */
export async function unprinted({
  record,
  at,
  isDraft,
}: AnyVisit): Promise<{ findings: object[]; wasReleased: boolean }> {
  const outcome = await assess(record, at, { attachments: FIXTURE_FILES.facts });
  if (!outcome.ok) throw new Error(`The record must fit the schema: ${JSON.stringify(outcome.issues.slice(0, 3))}`);
  const { assessed } = outcome;
  const { files } = FIXTURE_FILES;
  if (isDraft) return { findings: (await draftPdf(assessed, at, { files })).findings, wasReleased: false };
  const by = (record.release as { by: string }).by;
  if (!assessed.isReleasable) return { findings: await printedAsReleased(assessed, by, at), wasReleased: false };
  const place = { pack: 'Q-ANY-P1-1', number: 1, issue: 1, visit: 'any', before: [] };
  const attestation = { by, knowsOfNoHazard: true, at, read: assessed.assessmentSha256 };
  const sealed = await seal(assessed, attestation, place, files);
  return { findings: sealed.ok ? [] : sealed.findings, wasReleased: true };
}

/** A pack as it would look if the gate let it through: what holds for these holds for all that it does. */
async function printedAsReleased(assessed: Assessed, by: string, at: string): Promise<object[]> {
  const { visit, regime } = assessed;
  const releasedBy = visit.people.find(({ id }) => id === by) ?? visit.people[0];
  const released = { ...assessed, release: visit.release, releasedBy, statement: regime.statements[0], releasedAt: at };
  const identity = {
    pack: 'Q-ANY-P1-1',
    issue: '1',
    issuedAt: at,
    visit: 'any',
    previous: undefined,
    supersedes: undefined,
    sealedBy: undefined,
  };
  const { recordSha256, recordJson } = assessed;
  const context = packContext(assessed, { of: identity, recordSha256, released: released as unknown as ReleasedVisit });
  const { documents } = await packDocuments(context);
  const { findings } = await printPack(context, documents, { recordJson, files: FIXTURE_FILES.files });
  return findings;
}
