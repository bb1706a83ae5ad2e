import type { LoadingSheet } from '../../calc/loading-sheet.ts';
import { dateOf } from '../../units/calendar.ts';
import type { PackContext } from '../context.ts';
import type { View } from '../render.ts';
import { bothSystems, inBrackets } from './both-systems.ts';
import { stationRows } from './station-rows.ts';

/** A card for the cockpit, to be cut out: what the pilot needs to work out a loading. */
export function cockpitCard(context: PackContext, { minimumSoloKg, envelope }: LoadingSheet): View {
  const { visit, results, say, identity } = context;
  const { schedule } = results;
  return {
    card: {
      registration: visit.aircraft.registration,
      date: say.date(dateOf(identity.issuedAt)),
      pack: identity.pack,
      emptyMass: schedule ? say.measure('mass', schedule.massKg) : '',
      emptyArm: schedule ? say.measure('arm', schedule.armMm) : '',
      emptyMoment: schedule ? say.measure('moment', schedule.momentKgMm) : '',
      maximumMass: inBrackets(bothSystems(say, 'mass', visit.aircraft.maximumMassKg, { bound: 'most' })),
      usefulLoad: schedule ? inBrackets(bothSystems(say, 'mass', schedule.usefulLoadKg, { bound: 'most' })) : '',
      solo:
        envelope && minimumSoloKg === undefined
          ? say.words`none allowed`
          : inBrackets(bothSystems(say, 'mass', soloOnPlacard(context, minimumSoloKg ?? 0), { bound: 'least' })),
      stations: stationRows(context),
    },
  };
}

/** The least solo pilot: what the envelope, where there is one, allows, or more where the aircraft's own papers ask for it. */
function soloOnPlacard({ visit, regime }: PackContext, computedKg: number): number {
  const pilot = visit.aircraft.stations.find(({ kind }) => kind === 'pilot');
  const placardKg = pilot && 'minimumMassKg' in pilot ? pilot.minimumMassKg : undefined;
  return Math.max(computedKg, placardKg ?? regime.leastPilotKg.value);
}
