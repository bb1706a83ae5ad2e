import { totalHours } from '../../calc/lives/total-hours.ts';
import { isOnlyOf } from '../../gate/regimes/regime.ts';
import { statedIn } from '../../gate/stated.ts';
import { statementText } from '../../gate/statement-text.ts';
import { hoursOnMeter } from '../../record/meter-name.ts';
import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import { sentence } from '../../text/sentence.ts';
import type { PackContext } from '../context.ts';
import { flightText } from '../flight-text.ts';
import { personOf } from '../people.ts';
import type { View } from '../render.ts';
import { common, sources } from './common.ts';
import { clockText } from './items-due.ts';
import { bulletinsDone, closedSince, type Product, partsFitted, rectified } from './work-done.ts';

/** A product with a log book, and the kind of work that is entered in it. */
interface Book {
  of: Product;
  title: string;
  serial: string;
}

function booksOf({ visit, fmt }: PackContext): Book[] {
  const { serial, engine, propeller, products = [] } = visit.aircraft;
  const book = (of: Product, title: string, number: string | undefined): Book[] =>
    number === undefined ? [] : [{ of, title, serial: number }];
  return [
    ...book('airframe', fmt.text(m.logBookInserts_airframeLogBook), serial),
    ...book('engine', fmt.text(m.logBookInserts_engineLogBook), engine?.serial),
    ...book('propeller', fmt.text(m.logBookInserts_propellerLogBook), propeller?.serial),
    ...products.flatMap((product) =>
      book(
        product.kind,
        fmt.text(m.logBookInserts_productLogBook, { product: fmt.term(product.kind) }),
        product.serial,
      ),
    ),
  ];
}

/** Returns one slip for each log book, to be cut out, signed over its edge and pasted in. */
export function logBookInsertsView(context: PackContext): View {
  const { visit, identity, issuedAt, released, results, fmt } = context;
  const { aircraft } = visit;
  const signer = personOf(visit, visit.release?.by);
  const { schedule } = results;
  return {
    ...common(context),
    books: booksOf(context)
      .filter(({ of }) => isTouched(context, of))
      .map(({ of, title, serial }) => ({
        title,
        serial,
        registration: aircraft.registration,
        date: visit.visit.workEndedAt ? fmt.day(visit.visit.workEndedAt) : fmt.day(issuedAt),
        hours: hoursText(context, of, serial),
        work: workLines(context, of),
        weight:
          of === 'airframe' && schedule
            ? fmt.text(m.logBookInserts_emptyMass, {
                mass: fmt.measure('mass', schedule.massKg),
                arm: fmt.measure('arm', schedule.armMm),
                basis: fmt.term(schedule.basis),
              })
            : '',
        certified: certifiedIn(context, of),
        pack: identity?.pack ?? DASH,
        isReleased: released !== undefined,
        signer: signer?.name ?? DASH,
        authorisation: signer?.authorisation ?? DASH,
        signedAt: released ? fmt.timestamp(released.releasedAt) : DASH,
      })),
    ...sources(fmt.text(m.logBookInserts_eachSlip130Mm)),
  };
}

/**
 * The book of the airframe always gets an entry, every other for a bulletin or a modification on its product. Engine and
 * propeller also get one for an inspection, other products for a task of it that is work on them.
 */
function isTouched(context: PackContext, of: Product): boolean {
  if (of === 'airframe') return true;
  const { inspection } = context.visit;
  if (bulletinsDone(context, of).length > 0 || modificationsOn(context, of) !== '') return true;
  return hasEveryInspection(of) ? inspection !== undefined : tasksOn(context, of).length > 0;
}

/** Returns the sentence that certifies the inspection, for the books in which it is entered; empty if the statement on the work covers it. */
function certifiedIn({ visit, regime, fmt }: PackContext, of: Product): string {
  if (of !== 'airframe' && !hasEveryInspection(of)) return '';
  return statedIn(visit, regime)
    .filter(({ statement }) => isOnlyOf(statement, 'inspection'))
    .map(({ statement }) => statementText(statement, visit, fmt))
    .join(' ');
}

/** Whether the book of a product has an entry of every inspection, not only of the tasks on that product. */
const hasEveryInspection = (of: Product): boolean => of === 'engine' || of === 'propeller';

/** Kinds of work by product, where they are not called the same. */
const WORK_ON: Partial<Record<Product, string>> = { motor: 'engine', 'rotor-head': 'rotor', 'tail-rotor': 'rotor' };

function tasksOn({ visit }: PackContext, of: Product): string[] {
  return (visit.inspection?.tasks ?? [])
    .filter(({ kind, result }) => kind === (WORK_ON[of] ?? of) && result !== 'not-applicable' && result !== 'open')
    .map(({ text }) => sentence(text));
}

/** Returns the hours of a product since new, if its fitting is recorded; else the total by its meter, which may include those of an earlier product. */
function hoursText({ visit, results, fmt }: PackContext, of: Product, serial: string): string {
  const time = results.products.find((product) => product.kind === of && product.serial === serial);
  const sinceNew = time?.clocks.find(({ clock }) => clock === 'hours')?.sinceNew;
  if (sinceNew !== undefined) return fmt.text(m.sinceNew, { time: clockText('hours', sinceNew, fmt) });
  const meter = visit.meters?.readings.find((reading) => reading.of === of);
  return meter ? hoursOnMeter(visit, { hours: totalHours(meter), meter: meter.id }, fmt) : DASH;
}

/** Returns the modifications that are entered in the book of a product; in that of the airframe if none is named. */
function modificationsOn({ visit }: PackContext, of: Product): string {
  return (visit.modifications ?? [])
    .filter(({ products = ['airframe'] }) => products.includes(of))
    .map(({ id, title }) => `${id} ${title}`)
    .join('; ');
}

/** Returns the work on a product, each kind of work a sentence. Work without a product in the record is work on the airframe. */
function workLines(context: PackContext, of: Product): string[] {
  const { visit, fmt } = context;
  const inspection = visit.inspection ? [sentence(visit.inspection.kind)] : [];
  const bulletins = bulletinsDone(context, of);
  const ofBulletins =
    bulletins.length > 0 ? [fmt.text(m.logBookInserts_bulletinsDone, { bulletins: bulletins.join('; ') })] : [];
  const modifications = modificationsOn(context, of);
  const ofModifications = modifications ? [fmt.text(m.logBookInserts_modifications, { modifications })] : [];
  if (of !== 'airframe') {
    const tasks = hasEveryInspection(of) ? [] : tasksOn(context, of);
    return [...ofModifications, ...inspection, ...tasks, ...ofBulletins];
  }
  const findings = rectified(context).map(({ id, done }) => `${id} ${done}`);
  const parts = partsFitted(context).join('; ');
  const closed = closedSince(context);
  const flights = (visit.flights ?? []).map((flight) => flightText(flight, fmt)).join('; ');
  return [
    sentence(visit.visit.summary),
    ...inspection,
    ...ofModifications,
    ...(findings.length > 0 ? [fmt.text(m.logBookInserts_rectified, { findings: findings.join(' ') })] : []),
    ...(closed.length > 0 ? [fmt.text(m.logBookInserts_closedEarlierPacks, { closed: closed.join('; ') })] : []),
    ...ofBulletins,
    ...(flights ? [fmt.text(m.logBookInserts_flights, { flights })] : []),
    ...(parts ? [fmt.text(m.logBookInserts_partsFitted, { parts })] : []),
    ...(visit.weighing ? [fmt.text(m.weighed2)] : []),
  ];
}
