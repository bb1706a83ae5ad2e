import { totalHours } from '../../calc/total-hours.ts';
import { hoursOnMeter } from '../../visit/meter-name.ts';
import { phrase } from '../../words/words.ts';
import type { PackContext } from '../context.ts';
import { DASH, personOf } from '../people.ts';
import type { View } from '../render.ts';
import { common, sources } from './common.ts';

const BOOKS = [
  { of: 'airframe', title: phrase`Airframe log book` },
  { of: 'engine', title: phrase`Engine log book` },
  { of: 'propeller', title: phrase`Propeller log book` },
] as const;

/** One slip for each log book, to be cut out, signed over its edge and pasted in. */
export function logBookInsertsView(context: PackContext): View {
  const { visit, identity, released, results, say } = context;
  const { aircraft } = visit;
  const signer = personOf(visit, visit.release?.by);
  const serials = { airframe: aircraft.serial, engine: aircraft.engine?.serial, propeller: aircraft.propeller?.serial };
  const { schedule } = results;
  return {
    ...common(context),
    books: BOOKS.filter(({ of }) => serials[of] !== undefined && isTouched(context, of)).map(({ of, title }) => ({
      title: say.term(title),
      serial: serials[of] ?? DASH,
      registration: aircraft.registration,
      date: visit.visit.workEndedAt ? say.day(visit.visit.workEndedAt) : say.day(identity.issuedAt),
      hours: hoursText(context, of),
      work: workLine(context, of),
      weight:
        of === 'airframe' && schedule
          ? say.words`Empty mass ${say.measure('mass', schedule.massKg)} at ${say.measure('arm', schedule.armMm)}, ${say.term(schedule.basis)}.`
          : '',
      pack: identity.pack,
      statement: released
        ? say.words`Released as stated in the pack named.`
        : say.words`NOT RELEASED. Do not paste in.`,
      signer: signer?.name ?? DASH,
      authorisation: signer?.authorisation ?? DASH,
      signedAt: released ? say.moment(released.releasedAt) : DASH,
    })),
    ...sources(
      say.words`Each slip is 130 mm by 62 mm. Sign across its edge once it is pasted in; the entry names this pack, which holds the detail.`,
    ),
  };
}

/** Engine and propeller books get an entry only when the visit inspected them. */
function isTouched({ visit }: PackContext, of: string): boolean {
  return of === 'airframe' || visit.inspection !== undefined;
}

function hoursText({ visit, say }: PackContext, of: 'airframe' | 'engine' | 'propeller'): string {
  const meter = visit.meters?.readings.find((reading) => reading.of === of);
  return meter ? hoursOnMeter(visit, { hours: totalHours(meter), meter: meter.id }, say) : DASH;
}

function workLine({ visit, say }: PackContext, of: 'airframe' | 'engine' | 'propeller'): string {
  const inspection = visit.inspection ? `${visit.inspection.kind}. ` : '';
  if (of !== 'airframe') return inspection;
  const modifications = (visit.modifications ?? []).map(({ id, title }) => `${id} ${title}`).join('; ');
  return `${inspection}${modifications ? `${say.words`Modifications: ${modifications}.`} ` : ''}${visit.weighing ? `${say.words`Weighed.`} ` : ''}`;
}
