import type { Results } from '../../../worker/core/calc/results.ts';

/** A printed figure, the side on which a wrong value does harm, and by how much it may move. */
interface Figure {
  value: number;
  unsafe: 'up' | 'down' | 'both';
  by: number;
  /** Harm is done if it is gone. */
  isOwed?: boolean;
}

/** Without a stated ±: what a weighing of this size can tell. */
const UNSTATED = { massKg: 0.5, armMm: 2 } as const;

/**
 * Says which printed figures a change moves to the unsafe side by more than their ±.
 *
 * @returns empty if no figure does harm
 */
export function harmIn(before: Results, after: Results): string[] {
  const [had, has] = [figuresOf(before), figuresOf(after)];
  const moved = [...had].flatMap(([name, { value, unsafe, by, isOwed }]) => {
    const now = has.get(name)?.value;
    if (now === undefined) return isOwed ? [`${name} is gone`] : [];
    const change = now - value;
    const isHarm = (unsafe !== 'down' && change > by) || (unsafe !== 'up' && -change > by);
    return isHarm ? [`${name} ${show(value)} → ${show(now)}`] : [];
  });
  return [...moved, ...widerIn(before, after)];
}

const show = (value: number): string => String(Number(value.toPrecision(6)));

function figuresOf(results: Results): Map<string, Figure> {
  return new Map<string, Figure>([
    ...emptyFigures(results),
    ...loadingFigures(results),
    ...lateralFigures(results),
    ...dueFigures(results),
    ...electricalFigures(results),
    ...compassFigures(results),
  ]);
}

type Named = [string, Figure];

const toleranceOf = ({ schedule }: Results): { massKg: number; armMm: number } => schedule?.expanded ?? UNSTATED;

function emptyFigures(results: Results): Named[] {
  const { schedule, configurations } = results;
  const { massKg, armMm } = toleranceOf(results);
  return [
    ...(schedule
      ? ([
          ['empty mass', { value: schedule.massKg, unsafe: 'down', by: massKg, isOwed: true }],
          ['empty arm', { value: schedule.armMm, unsafe: 'both', by: armMm, isOwed: true }],
        ] satisfies Named[])
      : []),
    ...configurations.flatMap(({ empty }): Named[] =>
      empty
        ? [
            [`empty mass ${empty.id}`, { value: empty.massKg, unsafe: 'down', by: massKg, isOwed: true }],
            [`empty arm ${empty.id}`, { value: empty.armMm, unsafe: 'both', by: armMm, isOwed: true }],
          ]
        : [],
    ),
  ];
}

function loadingFigures(results: Results): Named[] {
  const { loading } = results;
  if (!loading) return [];
  const { massKg, armMm } = toleranceOf(results);
  const { limits, leastPilot, extremes, cockpitLoads, categories } = loading;
  const most = (value: number): Figure => ({ value, unsafe: 'up', by: massKg });
  const least = (value: number): Figure => ({ value, unsafe: 'down', by: massKg, isOwed: true });
  const margins = (extremes?.margins ?? []).map(({ side, margin }): Named => {
    const by = side === 'forward' || side === 'aft' ? armMm : massKg;
    return [`margin ${side}`, { value: margin, unsafe: 'up', by, isOwed: true }];
  });
  return [
    ['useful load', most(limits.usefulLoad.kg)],
    ['payload with full tanks', most(limits.fullTanksPayload.kg)],
    ...categories.map(({ id, limits: own }): Named => [`useful load ${id}`, most(own.usefulLoad.kg)]),
    ...(leastPilot?.kg === undefined ? [] : [['least pilot', least(leastPilot.kg)] satisfies Named]),
    ...margins,
    ...cockpitLoads.flatMap(({ state, minimum, maximum }): Named[] => [
      ...(minimum ? [[`least in cockpit ${state}`, least(minimum.kg)] satisfies Named] : []),
      ...(maximum ? [[`most in cockpit ${state}`, most(maximum.kg)] satisfies Named] : []),
    ]),
  ];
}

function lateralFigures({ lateral, hang }: Results): Named[] {
  return [
    ...(lateral
      ? ([
          [
            'lateral arm',
            { value: lateral.empty.armMm, unsafe: 'both', by: lateral.expanded?.armMm ?? 2, isOwed: true },
          ],
        ] satisfies Named[])
      : []),
    ...(lateral?.margins ?? []).map(
      ({ side, margin }): Named => [
        `lateral margin ${side}`,
        { value: margin, unsafe: 'up', by: lateral?.expanded?.armMm ?? 2, isOwed: true },
      ],
    ),
    ...(hang?.cg
      ? ([
          ['hang arm', { value: hang.cg.armMm, unsafe: 'both', by: Math.max(2, 2 * hang.cg.standardArmMm) }],
        ] satisfies Named[])
      : []),
  ];
}

const DAY_MS = 86_400_000;

function dueFigures({ due, clock }: Results): Named[] {
  const later = (name: string, value: number | undefined, by: number): Named[] =>
    value === undefined ? [] : [[name, { value, unsafe: 'up', by, isOwed: true }]];
  return [
    ...due.flatMap(({ id, dueDate, hoursLeft, landingsLeft, countsLeft }) => [
      ...later(`due ${id} days`, dueDate === undefined ? undefined : Date.parse(dueDate) / DAY_MS, 1),
      ...later(`due ${id} hours`, hoursLeft, 0.05),
      ...later(`due ${id} landings`, landingsLeft, 0.5),
      ...Object.entries(countsLeft ?? {}).flatMap(([what, left]) => later(`due ${id} ${what}`, left, 0.5)),
    ]),
    ...(clock.slackMin === undefined
      ? []
      : [['time before the latest departure', { value: clock.slackMin, unsafe: 'up', by: 1 }] satisfies Named]),
  ];
}

/** A tenth of an electrical figure is more than the load analysis can tell. */
const ELECTRICAL = 0.1;

function electricalFigures({ electrical, energy }: Results): Named[] {
  const share = (value: number, unsafe: Figure['unsafe'], isOwed = false): Figure => ({
    value,
    unsafe,
    by: Math.abs(value) * ELECTRICAL,
    isOwed,
  });
  const endurance = electrical?.endurance?.minutes;
  const flight = energy?.endurance;
  return [
    ...(endurance === undefined ? [] : [['minutes on the battery', share(endurance, 'up', true)] satisfies Named]),
    ...(electrical?.phases ?? []).map(({ phase, continuousA }): Named => [`load ${phase}`, share(continuousA, 'down')]),
    ...(electrical?.circuits ?? []).flatMap(({ id, ampacity, continuousDrop, protectionLimit }): Named[] => [
      ...(ampacity ? [[`ampacity ${id}`, share(ampacity.currentA, 'up')] satisfies Named] : []),
      ...(continuousDrop ? [[`voltage drop ${id}`, share(continuousDrop.dropV, 'down')] satisfies Named] : []),
      ...(protectionLimit ? [[`largest protection ${id}`, share(protectionLimit.limitA, 'up')] satisfies Named] : []),
    ]),
    ...(flight
      ? ([
          ['endurance', { value: flight.minutes, unsafe: 'up', by: Math.max(1, 2 * flight.standardMin), isOwed: true }],
        ] satisfies Named[])
      : []),
  ];
}

/** A card is steered to two degrees at best. */
const STEERED_DEG = 2;

function compassFigures({ compass }: Results): Named[] {
  return (compass?.swings ?? []).flatMap(({ state, card }) =>
    card.map(
      ({ forDeg, steerDeg }): Named => [
        `card ${state} for ${forDeg}°`,
        { value: nearZero(steerDeg - forDeg), unsafe: 'both', by: STEERED_DEG, isOwed: true },
      ],
    ),
  );
}

const nearZero = (deg: number): number => ((deg + 540) % 360) - 180;

type Envelope = NonNullable<NonNullable<Results['loading']>['envelope']>;

/** Says where an envelope allows what it did not. */
function widerIn(before: Results, after: Results): string[] {
  const [had, has] = [envelopesOf(before), envelopesOf(after)];
  const lightest = before.schedule?.massKg ?? 0;
  return [...had].flatMap(([name, envelope]) => {
    const now = has.get(name);
    if (!now) return [`envelope ${name} is gone`];
    return isWider(envelope, now, lightest) ? [`envelope ${name} is wider`] : [];
  });
}

function envelopesOf({ loading, configurations }: Results): Map<string, Envelope> {
  return new Map(
    [
      ['of the aircraft', loading?.envelope] as const,
      ...(loading?.categories ?? []).map(({ id, envelope }) => [id, envelope] as const),
      ...configurations.map(({ empty, loading: own }) => [empty?.id ?? '', own?.envelope] as const),
    ].flatMap(([name, envelope]) => (envelope ? [[name, envelope] as const] : [])),
  );
}

const LEVELS = 25;
const LEEWAY = { kg: 0.01, mm: 0.5 } as const;

/** Below the empty mass nobody flies: there an envelope may be as wide as it likes. @param lightest empty mass in kg */
function isWider(had: Envelope, has: Envelope, lightest: number): boolean {
  const [lowest, newLowest] = [had, has].map(({ lowestKg }) => Math.max(lowestKg, lightest)) as [number, number];
  if (has.highestKg > had.highestKg + LEEWAY.kg || newLowest < lowest - LEEWAY.kg) return true;
  const levels = Array.from(
    { length: LEVELS + 1 },
    (_, step) => newLowest + ((has.highestKg - newLowest) * step) / LEVELS,
  );
  return levels.some((kg) => {
    const [front, rear] = [armAt(had.forward, kg), armAt(had.aft, kg)];
    const [newFront, newRear] = [armAt(has.forward, kg), armAt(has.aft, kg)];
    if (front === undefined || rear === undefined || newFront === undefined || newRear === undefined) return false;
    return newFront < front - LEEWAY.mm || newRear > rear + LEEWAY.mm;
  });
}

function armAt(pieces: Envelope['forward'], kg: number): number | undefined {
  const piece = pieces.find(({ fromKg, toKg }) => fromKg <= kg && kg <= toKg);
  if (!piece) return undefined;
  const { fromKg, toKg, fromMm, toMm } = piece;
  return toKg === fromKg ? fromMm : fromMm + ((toMm - fromMm) * (kg - fromKg)) / (toKg - fromKg);
}
