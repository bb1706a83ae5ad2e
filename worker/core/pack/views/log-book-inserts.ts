import { totalHours } from '../../calc/lives/total-hours.ts';
import { hoursOnMeter } from '../../record/meter-name.ts';
import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import { sentence } from '../../text/sentence.ts';
import type { PackContext } from '../context.ts';
import { personOf } from '../people.ts';
import type { View } from '../render.ts';
import { common, sources } from './common.ts';
import { bulletinsDone, closedSince, type Product, partsFitted, rectified } from './work-done.ts';

const BOOKS = [
  { of: 'airframe', title: m.logBookInserts_airframeLogBook },
  { of: 'engine', title: m.logBookInserts_engineLogBook },
  { of: 'propeller', title: m.logBookInserts_propellerLogBook },
] as const;

/** Returns one slip for each log book, to be cut out, signed over its edge and pasted in. */
export function logBookInsertsView(context: PackContext): View {
  const { visit, identity, issuedAt, released, results, fmt } = context;
  const { aircraft } = visit;
  const signer = personOf(visit, visit.release?.by);
  const serials = { airframe: aircraft.serial, engine: aircraft.engine?.serial, propeller: aircraft.propeller?.serial };
  const { schedule } = results;
  return {
    ...common(context),
    books: BOOKS.filter(({ of }) => serials[of] !== undefined && isTouched(context, of)).map(({ of, title }) => ({
      title: fmt.text(title),
      serial: serials[of] ?? DASH,
      registration: aircraft.registration,
      date: visit.visit.workEndedAt ? fmt.day(visit.visit.workEndedAt) : fmt.day(issuedAt),
      hours: hoursText(context, of),
      work: workLines(context, of),
      weight:
        of === 'airframe' && schedule
          ? fmt.text(m.logBookInserts_emptyMass, {
              mass: fmt.measure('mass', schedule.massKg),
              arm: fmt.measure('arm', schedule.armMm),
              basis: fmt.term(schedule.basis),
            })
          : '',
      pack: identity?.pack ?? DASH,
      isReleased: released !== undefined,
      signer: signer?.name ?? DASH,
      authorisation: signer?.authorisation ?? DASH,
      signedAt: released ? fmt.timestamp(released.releasedAt) : DASH,
    })),
    ...sources(fmt.text(m.logBookInserts_eachSlip130Mm)),
  };
}

/** Engine and propeller books get an entry only if the visit inspected them, or complied with a bulletin on them. */
function isTouched(context: PackContext, of: Product): boolean {
  return of === 'airframe' || context.visit.inspection !== undefined || bulletinsDone(context, of).length > 0;
}

function hoursText({ visit, fmt }: PackContext, of: Product): string {
  const meter = visit.meters?.readings.find((reading) => reading.of === of);
  return meter ? hoursOnMeter(visit, { hours: totalHours(meter), meter: meter.id }, fmt) : DASH;
}

/** Returns the work on a product, each kind of work a sentence. Work without a product in the record is work on the airframe. */
function workLines(context: PackContext, of: Product): string[] {
  const { visit, fmt } = context;
  const inspection = visit.inspection ? [sentence(visit.inspection.kind)] : [];
  const bulletins = bulletinsDone(context, of);
  const ofBulletins =
    bulletins.length > 0 ? [fmt.text(m.logBookInserts_bulletinsDone, { bulletins: bulletins.join('; ') })] : [];
  if (of !== 'airframe') return [...inspection, ...ofBulletins];
  const modifications = (visit.modifications ?? []).map(({ id, title }) => `${id} ${title}`).join('; ');
  const findings = rectified(context).map(({ id, done }) => `${id} ${done}`);
  const parts = partsFitted(context).join('; ');
  const closed = closedSince(context);
  return [
    sentence(visit.visit.summary),
    ...inspection,
    ...(modifications ? [fmt.text(m.logBookInserts_modifications, { modifications })] : []),
    ...(findings.length > 0 ? [fmt.text(m.logBookInserts_rectified, { findings: findings.join(' ') })] : []),
    ...(closed.length > 0 ? [fmt.text(m.logBookInserts_closedEarlierPacks, { closed: closed.join('; ') })] : []),
    ...ofBulletins,
    ...(parts ? [fmt.text(m.logBookInserts_partsFitted, { parts })] : []),
    ...(visit.weighing ? [fmt.text(m.weighed2)] : []),
  ];
}
