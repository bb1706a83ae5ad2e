import { addresses } from './addresses.ts';
import { airData } from './air-data.ts';
import { antennas } from './antennas.ts';
import { compass } from './compass.ts';
import { dueDates } from './due-dates.ts';
import { electricalLoad } from './electrical-load.ts';
import { equipment } from './equipment-change.ts';
import { flight } from './flight.ts';
import type { Topic } from './formula.ts';
import { fuel } from './fuel.ts';
import { harnessTopic } from './harness.ts';
import { loading } from './loading.ts';
import { massAndMoment } from './mass-and-moment.ts';
import { papersAndScales } from './papers-and-scales.ts';
import { clock } from './release-clock.ts';
import { uncertainty } from './uncertainty.ts';
import { unitsAndRounding } from './units.ts';
import { weighingTopic } from './weighing.ts';
import { wires } from './wires.ts';

/** All formulas, in reading order. */
export const TOPICS: readonly Topic[] = [
  massAndMoment,
  weighingTopic,
  uncertainty,
  equipment,
  papersAndScales,
  fuel,
  loading,
  flight,
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
