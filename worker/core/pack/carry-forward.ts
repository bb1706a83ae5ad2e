import type { Results } from '../calc/results.ts';
import type { Baseline } from '../record/baseline.ts';
import type { EquipmentItem } from '../record/equipment.ts';
import { recordFormatter } from '../record/record-formatter.ts';
import type { Visit } from '../record/visit.ts';
import { factorOf } from '../units/quantity.ts';
import { historyReason } from './line-name.ts';

/**
 * Returns the baseline of the next visit: weight schedule, equipment list and history after this one, in the units and
 * the language of its record, ready for the next record.
 *
 * @param pack the sealed pack that it is carried forward from
 * @param date date on which that pack was issued
 * @returns undefined if the visit leaves no empty mass
 */
export function carriedForward(
  visit: Visit,
  { schedule, change, lateral, configurations }: Results,
  { pack, date }: { pack: string; date: string },
): Baseline | undefined {
  if (!schedule) return undefined;
  const { units, aircraft, baseline } = visit;
  const fmt = recordFormatter(visit);
  const [mass, arm, moment] = [factorOf('mass', units), factorOf('arm', units), factorOf('moment', units)];
  const { serial, engine, propeller } = aircraft;
  const hasList = baseline?.equipment !== undefined || change.after.length > 0;
  const carried = {
    source: 'previous-pack' as const,
    reference: pack,
    date,
    basis: schedule.basis,
    weighedOn: schedule.weighedOn,
    airframeSerial: serial,
    engineSerial: engine?.serial,
    propellerSerial: propeller?.serial,
    emptyMass: schedule.massKg / mass,
    emptyMassLimit: schedule.expanded && schedule.expanded.massKg / mass,
    configuration: aircraft.configuration?.id,
    emptyArmLimit: schedule.expanded && schedule.expanded.armMm / arm,
    emptyMoment: schedule.momentKgMm / moment,
    emptyLateralMoment: lateral && lateral.empty.momentKgMm / moment,
    schedules: otherSchedules(configurations, { pack, date }, { mass, moment }),
    equipment: hasList
      ? (change.after.map(({ massKg, massLimitKg, armMm, lateralArmMm, ...item }) => ({
          ...item,
          mass: massKg / mass,
          massLimit: massLimitKg === undefined ? undefined : massLimitKg / mass,
          arm: armMm / arm,
          lateralArm: lateralArmMm === undefined ? undefined : lateralArmMm / arm,
        })) as EquipmentItem[])
      : undefined,
    history: schedule.history.map(({ date: on, cause, massKg, momentKgMm }) => ({
      date: on,
      reason: fmt.value(historyReason(cause)),
      mass: massKg / mass,
      moment: momentKgMm / moment,
    })),
  };
  // Unknown values are left out, as in a record.
  return JSON.parse(JSON.stringify(carried)) as Baseline;
}

/**
 * Returns the schedules of the other configurations. One that follows from the configuration of the visit is
 * calculated again each time; its figures are carried, too, for a weighing of the other.
 */
function otherSchedules(
  configurations: Results['configurations'],
  { pack, date }: { pack: string; date: string },
  { mass, moment }: { mass: number; moment: number },
): unknown[] | undefined {
  if (configurations.length === 0) return undefined;
  return configurations.map(({ empty }) => ({
    configuration: empty.id,
    reference: empty.basis === 'unchanged' ? (empty.reference ?? pack) : pack,
    date: empty.basis === 'unchanged' ? (empty.date ?? date) : date,
    basis: 'computed',
    weighedOn: empty.weighedOn,
    emptyMass: empty.massKg / mass,
    emptyMoment: empty.momentKgMm / moment,
    emptyLateralMoment: empty.lateralKgMm === undefined ? undefined : empty.lateralKgMm / moment,
  }));
}
