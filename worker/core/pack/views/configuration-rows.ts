import type { ConfigurationEmpty } from '../../calc/configurations/configuration-empty.ts';
import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import type { View } from '../render.ts';

/** Returns the configurations that stand beside that of the visit, each with its empty mass and how it is known. */
export function configurationRows(context: PackContext): View {
  const { results, fmt, visit } = context;
  const rows = results.configurations.map(({ empty }) => ({
    name: empty.name,
    basis: basisOf(context, empty),
    mass: fmt.number('mass', empty.massKg, { extra: 1 }),
    arm: fmt.number('arm', empty.armMm, { extra: 1 }),
    moment: fmt.number('moment', empty.momentKgMm),
    lateral:
      empty.lateralKgMm === undefined
        ? DASH
        : fmt.number('arm', empty.lateralKgMm / empty.massKg, { extra: 1, signed: true }),
  }));
  const { configuration } = visit.aircraft;
  return {
    configuration: configuration?.name ?? '',
    hasConfigurations: rows.length > 0,
    configurations: rows,
    kits: results.configurations.flatMap(({ empty }) => kitLine(context, empty)),
  };
}

function basisOf({ fmt, visit, results }: PackContext, empty: ConfigurationEmpty): string {
  const reference = empty.reference ?? DASH;
  if (empty.basis === 'stands') return fmt.text(m.configurationRows_stands, { reference });
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
