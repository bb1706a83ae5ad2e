import type { ConfigurationEmpty } from '../../calc/configurations/configuration-empty.ts';
import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import type { View } from '../render.ts';
import { type Column, sectionOf, tableOf } from './table-section.ts';

/** Returns the other configurations of the aircraft, each with its empty mass and how it is known. */
export function configurationSection(context: PackContext): View[] {
  const { results, fmt } = context;
  const { configurations, lateral } = results;
  if (configurations.length === 0) return [];
  const rows = configurations.map(({ empty }) => [
    empty.name,
    basisOf(context, empty),
    fmt.number('mass', empty.massKg, { extra: 1 }),
    fmt.number('arm', empty.armMm, { extra: 1 }),
    fmt.number('moment', empty.momentKgMm),
    ...(lateral
      ? [
          empty.lateralKgMm === undefined
            ? DASH
            : fmt.number('arm', empty.lateralKgMm / empty.massKg, { extra: 1, signed: true }),
        ]
      : []),
  ]);
  const units = { armUnit: fmt.unit('arm'), massUnit: fmt.unit('mass'), momentUnit: fmt.unit('moment') };
  const columns: Column[] = [
    ['name', fmt.text(m.weightAndBalanceSchedule_configuration)],
    ['text', fmt.text(m.basis)],
    ['num', fmt.text(m.weightAndBalanceSchedule_empty, units)],
    ['num', fmt.text(m.arm, units)],
    ['num', fmt.text(m.moment, units)],
    ...(lateral ? [['num', fmt.text(m.loadingSheet_lateralArm)] as const] : []),
  ];
  return [
    sectionOf(
      fmt.text(m.weightAndBalanceSchedule_otherConfigurations),
      [tableOf(fmt.text(m.weightAndBalanceSchedule_otherSchedules), columns, rows)],
      configurations.flatMap(({ empty }) => kitLine(context, empty)),
    ),
  ];
}

function basisOf({ fmt, visit, results }: PackContext, empty: ConfigurationEmpty): string {
  const reference = empty.reference ?? DASH;
  if (empty.basis === 'unchanged') return fmt.text(m.configurationRows_unchanged, { reference });
  if (empty.basis === 'changed') return fmt.text(m.configurationRows_changed, { reference });
  const { configuration } = visit.aircraft;
  const from =
    empty.from === configuration?.id
      ? (configuration?.name ?? '')
      : (results.configurations.find((other) => other.empty.id === empty.from)?.empty.name ?? '');
  return from === '' ? fmt.text(m.configurationRows_followsThis) : fmt.text(m.configurationRows_follows, { from });
}

/** Returns what leaves and comes between two configurations, in a sentence. */
function kitLine({ fmt }: PackContext, { name, kit }: ConfigurationEmpty): string[] {
  if (kit.length === 0) return [];
  const parts = kit.map((each) =>
    fmt.text(m.configurationRows_kitPart, {
      name: each.name,
      mass: fmt.measure('mass', each.massKg, { signed: true, extra: 1 }),
      arm: fmt.measure('arm', each.armMm),
    }),
  );
  return [`${name}: ${parts.join('; ')}`];
}
