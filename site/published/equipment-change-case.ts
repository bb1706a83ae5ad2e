import { equipmentChange } from '../../worker/core/calc/mass/equipment-change.ts';
import { predictEmpty } from '../../worker/core/calc/mass/prediction.ts';
import type { Visit } from '../../worker/core/record/visit.ts';
import { factorOf, type Units } from '../../worker/core/units/quantity.ts';
import { readFixture } from './read-fixture.ts';
import { visitFrom } from './read-visit.ts';

interface Item {
  name: string;
  mass: number;
  arm: number;
}

export interface EquipmentInput {
  units: Units;
  /** The moment is taken where it is given, else the arm. */
  empty: { mass: number; moment?: number; arm?: number };
  removed?: Item[];
  installed?: Item[];
  relocated?: (Item & { to: number })[];
  /** Length of the mean aerodynamic chord. */
  mac?: number;
}

/** A visit whose one modification makes the changes of the case. */
export function visitChanging({
  units,
  empty,
  removed = [],
  installed = [],
  relocated = [],
  mac,
}: EquipmentInput): Visit {
  const base = readFixture('visits/computed-only') as {
    aircraft: object;
    baseline: object;
    modifications: object[];
  };
  const listed = [...removed, ...relocated].map(({ name, mass, arm }, index) => ({ id: `E${index}`, name, mass, arm }));
  const changes = [
    ...removed.map((_, index) => ({ kind: 'removed', item: `E${index}`, fate: 'owner' })),
    ...relocated.map(({ to }, index) => ({ kind: 'relocated', item: `E${removed.length + index}`, arm: to })),
    ...installed.map((item, index) => ({ kind: 'installed', id: `N${index}`, ...item })),
  ];
  return visitFrom({
    ...base,
    units,
    aircraft: { ...base.aircraft, ...(mac && { mac: { leadingEdgeArm: 0, length: mac } }) },
    baseline: {
      source: 'schedule',
      reference: 'Case',
      date: '2024-05-17',
      basis: 'weighed',
      emptyMass: empty.mass,
      ...(empty.moment === undefined ? { emptyArm: empty.arm } : { emptyMoment: empty.moment }),
      equipment: listed,
    },
    modifications: [{ ...base.modifications[0], changes }],
  });
}

/** An equipment change through the door, `equipmentChange()` and `predictEmpty()`. */
export function equipmentChangeCase(input: EquipmentInput): Record<string, number> {
  const visit = visitChanging(input);
  const change = equipmentChange(visit);
  const prediction = predictEmpty(visit, change);
  if (!prediction) throw new Error('the case has an empty mass');
  const [mass, arm, moment] = (['mass', 'arm', 'moment'] as const).map((quantity) => factorOf(quantity, input.units));
  const inUnits = (value: number, factor = 1): number => value / factor;
  return {
    changeMass: inUnits(change.massKg, mass),
    changeMoment: inUnits(change.momentKgMm, moment),
    mass: inUnits(prediction.massKg, mass),
    moment: inUnits(prediction.momentKgMm, moment),
    arm: inUnits(prediction.armMm, arm),
    shift: inUnits(prediction.armMm - prediction.baseline.armMm, arm),
  };
}
