import { reduceWeighing } from '../../worker/core/calc/weighing/weighing.ts';
import { factorOf, type Units } from '../../worker/core/units/quantity.ts';
import { readFixture } from './read-fixture.ts';
import { visitFrom } from './read-visit.ts';

interface Loose {
  name: string;
  mass: number;
  arm: number;
}

interface WeighingInput {
  units: Units;
  points: { name: string; reading: number; arm: number; tare?: number }[];
  aboard?: Loose[];
  missing?: Loose[];
}

/** Scale readings through the door and `reduceWeighing()`: empty mass, moment and arm. */
export function weighingCase({ units, points, aboard = [], missing = [] }: WeighingInput): Record<string, number> {
  const base = readFixture('visits/weighing-only') as { weighing: { scales: object[] } };
  const [scale] = base.weighing.scales;
  const weighing = {
    ...base.weighing,
    scales: [{ ...scale, id: 'S', capacity: 100_000 }],
    points: points.map(({ name, reading, arm, tare = 0 }, index) => ({
      id: `P${index}`,
      name,
      side: 'centre',
      scale: 'S',
      arm,
      armLimit: 0,
      tare,
      readings: [reading],
    })),
    itemsAboard: aboard,
    itemsMissing: missing,
  };
  const visit = visitFrom({ ...base, units, weighing });
  const result = visit.weighing && reduceWeighing(visit, visit.weighing);
  if (!result) throw new Error('the case has a weighing that leaves a mass');
  const { massKg, momentKgMm, armMm } = result.empty;
  return {
    mass: massKg / factorOf('mass', units),
    moment: momentKgMm / factorOf('moment', units),
    arm: armMm / factorOf('arm', units),
  };
}
