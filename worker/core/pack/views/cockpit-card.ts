import { envelopeIn } from '../../calc/loading/aircraft-envelope.ts';
import { DASH } from '../../text/dash.ts';
import { MAX, MIN } from '../../text/figure.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import type { View } from '../render.ts';
import { bothSystems, inBrackets } from './both-systems.ts';
import { pilotComputesLine } from './class-sections.ts';
import { limitRows as lateralLimitRows } from './lateral-section.ts';
import { type LimitRow, loadLimitRows, massLimitRows } from './pilot-limits.ts';
import { stationRows } from './station-rows.ts';

/** Returns a card for the cockpit, to be cut out: the figures for a loading calculation, and every limit on a loading. */
export function cockpitCard(context: PackContext): View {
  const { visit, results, released, fmt, identity, issuedAt } = context;
  const { schedule } = results;
  const cgLimits = cgRows(context);
  const joined = visit.aircraft.loadingLimits ?? [];
  return {
    card: {
      registration: visit.aircraft.registration,
      date: fmt.day(issuedAt),
      pack: identity?.pack ?? DASH,
      isReleased: released !== undefined,
      empty: schedule
        ? fmt.text(m.cockpitCard_moment, {
            mass: fmt.measure('mass', schedule.massKg),
            arm: fmt.measure('arm', schedule.armMm),
            moment: fmt.measure('moment', schedule.momentKgMm),
          }) + lateralText(context)
        : '',
      limits: [...massLimitRows(context), ...loadLimitRows(context)].map(cardLimit),
      hasLateral: results.lateral !== undefined,
      stations: stationRows(context).map(({ name, arm, lateral, least, most }) => ({
        lateral: lateral as string,
        name: name as string,
        arm: arm as string,
        least: inBrackets(least as LimitRow['measure']),
        most: inBrackets(most as LimitRow['measure']),
      })),
      joined: joined.map(({ text, maximumMassKg }) => ({
        name: text,
        most: inBrackets(bothSystems(fmt, 'mass', maximumMassKg, MAX)),
      })),
      configuration: visit.aircraft.configuration?.name ?? '',
      more: cardLines(context),
      hasCg: cgLimits.length > 0,
      cg: cgLimits,
    },
  };
}

/** Returns the lateral moment of the empty aircraft, with which a pilot calculates the lateral balance. */
function lateralText({ results, fmt }: PackContext): string {
  const { lateral } = results;
  if (!lateral) return '';
  const moment = fmt.measure('moment', lateral.empty.momentKgMm, { signed: true });
  return `; ${fmt.text(m.cockpitCard_lateralMoment, { moment })}`;
}

/** Returns the limits of the class and of the lateral axis, each in a line. */
function cardLines(context: PackContext): string[] {
  const { visit, results, fmt } = context;
  const positions = (visit.aircraft.suspension?.positions ?? []).map(({ name, fromMassKg, toMassKg }) =>
    fmt.text(m.cockpitCard_position, {
      name,
      from: fromMassKg === undefined ? DASH : fmt.measure('mass', fromMassKg, MIN),
      to: toMassKg === undefined ? DASH : fmt.measure('mass', toMassKg, MAX),
    }),
  );
  const cockpit = (results.loading?.cockpitLoads ?? []).map(({ state, minimum, maximum }) =>
    fmt.text(m.cockpitCard_cockpitLoad, {
      state: state === '' ? fmt.text(m.classRows_asItStands) : state,
      minimum: minimum ? fmt.measure('mass', minimum.kg, MIN) : fmt.text(m.noneAllowed),
      maximum: maximum ? fmt.measure('mass', maximum.kg, MAX) : DASH,
    }),
  );
  const lateral = lateralLimitRows(context).map(({ at, lateral: arm }) => `${at}: ${arm}`);
  const computes = pilotComputesLine(context);
  return [
    ...positions,
    ...cockpit,
    ...(lateral.length > 0 ? [fmt.text(m.cockpitCard_lateral, { corners: lateral.join('; ') })] : []),
    ...(computes === '' ? [] : [computes]),
  ];
}

function cardLimit({ name, measure, note }: LimitRow): View {
  return { name, value: inBrackets(measure), note };
}

/** Returns both ends of the permitted centre of gravity at each mass at which they bend; linear between them, undefined beyond. */
function cgRows({ visit, fmt }: PackContext): View[] {
  const envelope = envelopeIn(visit.aircraft);
  if (!envelope) return [];
  const { forward, aft } = envelope;
  const masses = [envelope.lowestKg, ...forward.map(({ toKg }) => toKg)];
  return masses.map((massKg, index) => {
    const [below, above] = [index - 1, index];
    // If a limit steps at a mass, the narrower side of the step applies to both.
    const forwardMm = Math.max(forward[below]?.toMm ?? -Infinity, forward[above]?.fromMm ?? -Infinity);
    const aftMm = Math.min(aft[below]?.toMm ?? Infinity, aft[above]?.fromMm ?? Infinity);
    return {
      mass: fmt.stated('mass', massKg),
      forward: fmt.number('arm', forwardMm, MIN),
      aft: fmt.number('arm', aftMm, MAX),
    };
  });
}
