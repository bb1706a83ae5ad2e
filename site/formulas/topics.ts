import { addresses } from './addresses.ts';
import { airData } from './air-data.ts';
import { antennas } from './antennas.ts';
import { cockpit } from './cockpit.ts';
import { compass } from './compass.ts';
import { dueDates } from './due-dates.ts';
import { electricalLoad } from './electrical-load.ts';
import { energy } from './energy.ts';
import { equipment } from './equipment-change.ts';
import { flight } from './flight.ts';
import type { Topic } from './formula.ts';
import { fuel } from './fuel.ts';
import { hangAndLevel } from './hang-and-level.ts';
import { harnessTopic } from './harness.ts';
import { lateral } from './lateral.ts';
import { loading } from './loading.ts';
import { massAndMoment } from './mass-and-moment.ts';
import { papersAndScales } from './papers-and-scales.ts';
import { clock } from './release-clock.ts';
import { shifts } from './shifts.ts';
import { uncertainty } from './uncertainty.ts';
import { unitsAndRounding } from './units.ts';
import { weighingTopic } from './weighing.ts';
import { wires } from './wires.ts';

/** All formulas, in reading order. */
export const TOPICS: readonly Topic[] = [
  massAndMoment,
  shifts,
  weighingTopic,
  uncertainty,
  lateral,
  hangAndLevel,
  equipment,
  papersAndScales,
  fuel,
  loading,
  flight,
  cockpit,
  energy,
  electricalLoad,
  wires,
  harnessTopic,
  compass,
  antennas,
  addresses,
  airData,
  dueDates,
  clock,
  unitsAndRounding,
];
