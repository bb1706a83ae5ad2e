import type { Aircraft, Baseline, Configuration, Visit } from '../../record/visit.ts';
import type { EmptyAircraft } from '../loading/empty-aircraft.ts';
import type { ChangeLine, EquipmentChange } from '../mass/equipment-change.ts';
import { percentMac } from '../mass/mac.ts';
import { cgMm, hasMass, type MassMoment, total } from '../mass/mass-moment.ts';
import type { ConfigurationEmpty, KitMass } from './configuration-result.ts';
import { configuredAircraft } from './configured.ts';

export type { ConfigurationEmpty } from './configuration-result.ts';

type Schedule = NonNullable<Baseline['schedules']>[number];

interface Changes {
  along: EquipmentChange;
  /** The same changes over the lateral arms; undefined without lateral arms. */
  across: EquipmentChange | undefined;
}

/**
 * Returns the empty condition of every other configuration that has one: from another configuration by its kit, or its
 * own schedule with the changes of this visit that do not convert the aircraft.
 *
 * @source common practice, no source: M′ = M − Σ out + Σ in, in both axes
 */
export function configurationEmpties(
  visit: Visit,
  worked: EmptyAircraft | undefined,
  changes: Changes,
): ConfigurationEmpty[] {
  const { configurations = [] } = visit.aircraft;
  const known = new Map<string, ConfigurationEmpty>();
  const emptyOf = (configuration: Configuration, asking: ReadonlySet<string>): ConfigurationEmpty | undefined => {
    const found = known.get(configuration.id);
    if (found || asking.has(configuration.id)) return found;
    const made = configuration.follows
      ? following(visit, configuration, baseOf(configuration, new Set([...asking, configuration.id])))
      : fromSchedule(visit, configuration, changes);
    if (made) known.set(configuration.id, made);
    return made;
  };
  const baseOf = ({ follows }: Configuration, asking: ReadonlySet<string>): EmptyAircraft | undefined => {
    const from = follows?.configuration;
    if (from === undefined || from === visit.aircraft.configuration?.id) return worked;
    const other = configurations.find(({ id }) => id === from);
    return other && emptyOf(other, asking);
  };
  return configurations.flatMap((configuration) => emptyOf(configuration, new Set()) ?? []);
}

function following(
  { aircraft }: Visit,
  configuration: Configuration,
  base: EmptyAircraft | undefined,
): ConfigurationEmpty | undefined {
  const { follows } = configuration;
  if (!base || !follows) return undefined;
  const kit = follows.kit.map(({ kind, name, massKg, armMm }): KitMass => {
    const signedKg = kind === 'off' ? -massKg : massKg;
    return { name, massKg: signedKg, armMm, momentKgMm: signedKg * armMm };
  });
  const lateral = follows.kit.reduce(
    (sum, { kind, massKg, lateralArmMm = 0 }) => sum + (kind === 'off' ? -massKg : massKg) * lateralArmMm,
    0,
  );
  return placed(aircraft, configuration, total([base, ...kit]), {
    basis: 'follows',
    from: follows.configuration ?? aircraft.configuration?.id,
    kit,
    lateralKgMm: base.lateralKgMm === undefined ? undefined : base.lateralKgMm + lateral,
  });
}

function fromSchedule(
  visit: Visit,
  configuration: Configuration,
  { along, across }: Changes,
): ConfigurationEmpty | undefined {
  const schedule = scheduleOf(visit, configuration);
  const before = schedule && emptyOfSchedule(schedule);
  if (!schedule || !before) return undefined;
  const converting = new Set(
    (visit.modifications ?? []).filter(({ convertsTo }) => convertsTo !== undefined).map(({ id }) => id),
  );
  const counts = ({ modification }: ChangeLine): boolean => modification === undefined || !converting.has(modification);
  const lines = along.lines.filter(counts);
  const lateralLines = across?.lines.filter(counts) ?? [];
  const isChanged = lines.some(({ massKg, momentKgMm }) => massKg !== 0 || momentKgMm !== 0);
  return placed(visit.aircraft, configuration, total([before, ...lines]), {
    basis: isChanged ? 'changed' : 'unchanged',
    reference: schedule.reference,
    date: schedule.date,
    weighedOn: schedule.weighedOn ?? (schedule.basis === 'weighed' ? schedule.date : undefined),
    kit: [],
    lateralKgMm: before.lateralKgMm === undefined ? undefined : before.lateralKgMm + total(lateralLines).momentKgMm,
  });
}

/** Returns the valid schedule of a configuration: its own, else the baseline if that is of this configuration and the visit worked on another. */
function scheduleOf({ aircraft, baseline }: Visit, { id }: Configuration): Schedule | Baseline | undefined {
  const own = baseline?.schedules?.find(({ configuration }) => configuration === id);
  const isBefore = baseline?.configuration === id && aircraft.configuration?.id !== id;
  return own ?? (isBefore ? baseline : undefined);
}

function emptyOfSchedule(schedule: Schedule | Baseline): EmptyAircraft | undefined {
  const { emptyMassKg: massKg, emptyMomentKgMm, emptyArmMm, emptyLateralArmMm, emptyLateralMomentKgMm } = schedule;
  if (emptyMomentKgMm === undefined && emptyArmMm === undefined) return undefined;
  const lateralKgMm =
    emptyLateralMomentKgMm ?? (emptyLateralArmMm === undefined ? undefined : massKg * emptyLateralArmMm);
  return { massKg, momentKgMm: emptyMomentKgMm ?? massKg * (emptyArmMm ?? 0), lateralKgMm };
}

type About = Pick<ConfigurationEmpty, 'basis' | 'kit' | 'lateralKgMm'> &
  Partial<Pick<ConfigurationEmpty, 'from' | 'reference' | 'date' | 'weighedOn'>>;

function placed(
  aircraft: Aircraft,
  configuration: Configuration,
  empty: MassMoment,
  about: About,
): ConfigurationEmpty | undefined {
  if (!hasMass(empty)) return undefined;
  const armMm = cgMm(empty);
  const { massKg, momentKgMm } = empty;
  return {
    id: configuration.id,
    name: configuration.name,
    massKg,
    momentKgMm,
    armMm,
    macPercent: percentMac(configuredAircraft(aircraft, configuration).mac, armMm),
    from: undefined,
    reference: undefined,
    date: undefined,
    weighedOn: undefined,
    ...about,
  };
}
