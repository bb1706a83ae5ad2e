import * as z from 'zod';
import { LoadingSheet } from './loading-schema.ts';

/** Shapes of the results in an assessment. Names end in their units; what was not computed is left out. */
const number = z.number();
const maybe = number.optional();
const text = z.string();
const optionalText = text.optional();
const flag = z.boolean();

const MassMoment = z.object({ massKg: number, momentKgMm: number });
const Placed = MassMoment.extend({ armMm: number });
const MassArm = z.object({ massKg: number, armMm: number });

const EquipmentItem = z.object({
  id: text,
  name: text,
  maker: optionalText,
  partNumber: optionalText,
  serial: optionalText,
  version: optionalText,
  location: optionalText,
  massKg: number,
  massLimitKg: maybe,
  massSource: optionalText,
  armMm: number,
  required: flag.optional(),
});

const Change = MassMoment.extend({
  lines: z.array(
    Placed.extend({
      kind: z.enum(['removed', 'installed', 'relocated', 'correction']),
      modification: optionalText,
      item: text,
      name: text,
      standardMassKg: number,
      unlisted: flag,
      pointer: text,
    }),
  ),
  equipment: z.array(EquipmentItem).meta({ description: 'The list as it stands after the visit' }),
});

const Weighing = z.object({
  points: z.array(
    Placed.extend({
      id: text,
      name: text,
      side: optionalText,
      tareKg: number,
      runs: z.array(z.object({ grossKg: number, correctionKg: number, netKg: number })),
      spreadKg: number,
    }),
  ),
  asWeighed: MassMoment,
  adjustments: z.array(Placed.extend({ name: text, why: text, pointer: text, massLimitKg: number })),
  empty: Placed,
  runTotalsKg: z.array(number),
  budget: z.array(
    z.object({
      source: text,
      quantity: text,
      standard: number,
      massSensitivity: number,
      momentSensitivity: number,
    }),
  ),
  standard: MassArm,
  expanded: MassArm.meta({ description: 'k = 2' }),
});

const Comparison = z.object({
  differenceKg: number,
  differenceMm: number,
  standard: MassArm,
  massRatio: number,
  armRatio: number,
  isSignificant: flag,
});

const Schedule = Placed.extend({
  basis: z.enum(['weighed', 'computed']),
  macPercent: maybe,
  expanded: MassArm.optional(),
  weighedOn: optionalText,
  changesSinceWeighing: number,
  usefulLoadKg: number,
  supersedes: optionalText,
  history: z.array(Placed.extend({ date: text, reason: text, changeKg: number, changeKgMm: number })),
});

const Load = z.object({ continuousA: number, peakA: number });
const Drop = z.object({ currentA: number, dropV: number, limitV: number });

const Electrical = z.object({
  phases: z.array(Load.extend({ phase: text, before: Load, capacityA: maybe })),
  endurance: z
    .object({
      usableAmpMinutes: number,
      stretches: z.array(z.object({ name: text, loadA: number, minutes: maybe, ampMinutes: number })),
      minutes: maybe,
      neededMin: number,
    })
    .optional(),
  circuits: z.array(
    Load.extend({
      id: text,
      ampacity: z.object({ currentA: number, from: text }).optional(),
      conductorC: number,
      continuousDrop: Drop.optional(),
      peakDrop: Drop.optional(),
      measuredLimitV: number,
      longestRunM: maybe,
      protectionLimit: z.object({ limitA: number, from: text }).optional(),
    }),
  ),
});

const Harness = z.object({ lengthM: number, massKg: number, armMm: maybe });

const Wiring = z.object({
  harness: z.object({ added: Harness, removed: Harness }),
  nets: z.array(z.object({ pins: z.array(text), circuits: z.array(text) })),
});

const Antennas = z.object({
  antennas: z.array(
    z.object({
      id: text,
      wavelengthMm: number,
      quarterWaveMm: number,
      cableLossDb: maybe,
      dragN: maybe,
      standingWave: maybe,
    }),
  ),
  spacings: z.array(z.object({ first: number, second: number, distanceMm: number, neededMm: maybe })),
});

const Limited = z.object({
  name: text,
  at: z.object({ value: number, unit: text }).optional(),
  value: number,
  unit: text,
  least: maybe,
  most: maybe,
  isWithin: flag,
  terms: z.object({ read: number, against: number }).optional(),
});

const Check = z.object({ name: text, paragraph: text, outcome: z.enum(['passed', 'failed', 'not recorded']) });

const Surveillance = z.object({
  address: z
    .object({
      hexadecimal: text,
      octal: text,
      binary: text,
      state: optionalText,
      isReserved: flag,
      registration: optionalText,
    })
    .optional(),
  devices: z.array(z.object({ id: text, set: optionalText, received: optionalText })),
  transponder: z.array(Limited),
  modeS: z.array(Check),
  transponderOmissions: z.array(text),
  encoder: z.array(
    z.object({ altimeterFt: number, encoderFt: number, differenceFt: number, isWithin: flag, pulses: text }),
  ),
  altimeter: z.array(Limited),
  altimeterOmissions: z.array(z.object({ what: text, at: z.array(number), unit: text })),
  staticSystem: z.object({ figures: z.array(Limited), checks: z.array(Check) }).optional(),
});

const Coefficients = z.object({ A: number, B: number, C: number, D: number, E: number });

const Compass = z.object({
  variation: z.object({ variationDeg: number, model: text, validFrom: text, validUntil: text }).optional(),
  swings: z.array(
    z.object({
      state: text,
      readings: z.array(z.object({ headingDeg: number, compassDeg: number, deviationDeg: number, residualDeg: maybe })),
      coefficients: Coefficients.optional(),
      correction: z.object({ B: number, C: number, setSouthDeg: number, setWestDeg: number }).optional(),
      greatestDeviationDeg: number,
      greatestResidualDeg: number,
      card: z.array(z.object({ forDeg: number, steerDeg: number })),
    }),
  ),
  loads: z.array(z.object({ name: text, shiftDeg: number })),
});

const EngineReading = z.object({
  name: text,
  unit: text,
  before: maybe,
  after: maybe,
  change: maybe,
  least: maybe,
  most: maybe,
  isWithin: flag,
  isChanged: flag,
});

export const Due = z.object({
  id: text,
  item: text,
  basis: text,
  dueDate: optionalText,
  dueHours: maybe,
  meter: optionalText,
  dueLandings: maybe,
  daysLeft: maybe,
  hoursLeft: maybe,
  landingsLeft: maybe,
  forecastDate: optionalText,
  isOverdue: flag,
  isWithinTolerance: flag,
});

const Job = z.object({
  id: text,
  text,
  by: optionalText,
  startMin: number,
  endMin: number,
  isCritical: flag,
});

const Clock = z.object({
  plan: z.object({ jobs: z.array(Job), totalMin: number, next: Job.optional(), circle: z.array(text) }),
  readyAt: text,
  slackMin: maybe,
  arrivalAt: optionalText,
  sunsetAt: optionalText,
  daylightMin: maybe,
  isDarkAtArrival: flag.optional(),
});

export const AssessmentResults = z
  .object({
    change: Change,
    prediction: Placed.extend({ baseline: Placed, standard: MassArm }).optional(),
    weighing: Weighing.optional(),
    comparison: Comparison.optional(),
    residual: z.object({ massKg: number, expandedKg: number, armMm: maybe, isTold: flag }).optional(),
    schedule: Schedule.optional(),
    loading: LoadingSheet.optional(),
    electrical: Electrical.optional(),
    wiring: Wiring.optional(),
    antennas: Antennas.optional(),
    surveillance: Surveillance.optional(),
    compass: Compass.optional(),
    engineRuns: z.array(EngineReading),
    due: z.array(Due),
    clock: Clock,
    bulletins: z.array(z.object({ id: text, applies: z.enum(['applies', 'does-not-apply', 'undecided']) })),
  })
  .meta({ title: 'Results', description: 'Everything computed, unrounded, in kg, mm, l and the units names end in' });
