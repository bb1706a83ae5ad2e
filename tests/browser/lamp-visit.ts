import { type Slipmark, slipmark, type VisitRecord } from '../../worker/client/client.ts';
import { exampleVisit, withRegistration } from '../../worker/local/service/example-visit.ts';

type Carried = NonNullable<VisitRecord['carried']>;

/** The full visit without its files, for an aircraft with these marks. */
export function annualVisit(registration: string): VisitRecord {
  const { attachments: _files, ...record } = exampleVisit('nose-wheel-full', new Date());
  return withRegistration(record, registration);
}

interface LampVisit {
  annual: VisitRecord;
  baseline: VisitRecord['baseline'];
  /** What the hour meter of the airframe reads after it. */
  hours: number;
  carried?: Carried;
}

/** A lamp was changed, and nothing else: a small record of the same aircraft, which says nothing of what stood open. */
export function lampVisit({ annual, baseline, hours, carried }: LampVisit): VisitRecord {
  const { schemaVersion, units, workshop, people, aircraft, weighing, meters } = annual;
  const on = workDay(annual);
  // Every meter ran on as that of the airframe did.
  const flown = hours - (meters?.readings.find(({ of }) => of === 'airframe')?.outHours ?? hours);
  const readings = (meters?.readings ?? []).map((meter) => {
    const now = Math.round((meter.outHours + flown) * 10) / 10;
    return { ...meter, inHours: now, outHours: now };
  });
  return {
    schemaVersion,
    units,
    workshop,
    people,
    aircraft,
    ...(baseline && { baseline: { ...baseline, date: on } }),
    meters: { readings },
    visit: {
      arrivedAt: `${on}T09:00:00+01:00`,
      workEndedAt: `${on}T12:00:00+01:00`,
      summary: 'Landing lamp changed.',
    },
    ...(weighing && { weighing: { ...weighing, weighedAt: `${on}T11:00:00+01:00` } }),
    ...(carried && { carried }),
    release: { by: 'jonas', statement: 'work-complete', scope: 'The lamp and the weighing alone.' },
  };
}

/** The day on which work was done. */
export const workDay = ({ visit }: VisitRecord): string => (visit.workEndedAt ?? visit.arrivedAt).slice(0, 10);

/** Every item that stands open is answered for: it stands on as it stood. */
export const repeated = (items: readonly string[], on: string): Carried =>
  items.map((item) => ({ item, answer: 'repeated', by: 'jonas', at: `${on}T11:30:00+01:00` }));

interface Named {
  registration: string;
  visit: string;
}

/** Keeps a record, as the newest form of its visit. */
export async function keptVisit(client: Slipmark, name: Named, body: VisitRecord): Promise<void> {
  const { items } = (await client.listVisits({ registration: name.registration })).body;
  const isThere = items.some(({ visit }) => visit === name.visit);
  const condition = isThere ? { ifMatch: (await client.getVisit(name)).etag } : { ifNoneMatch: '*' };
  await client.putVisit({ ...name, ...condition, body });
}

/** Releases a visit as it is kept. */
export async function releasedVisit(client: Slipmark, name: Named): Promise<string> {
  const { etag } = await client.getAssessment(name);
  const released = await client.releaseVisit({ ...name, ifMatch: etag, body: { by: 'jonas', knowsOfNoHazard: true } });
  return released.body.pack;
}

/** The names of everything that stands open on an aircraft. */
export async function openNames(client: Slipmark, registration: string): Promise<string[]> {
  const { items, deferred, watched, limitations, flightTests } = (await client.getDue({ registration })).body;
  return [...items, ...deferred, ...watched, ...limitations, ...flightTests].map(({ openItem }) => openItem);
}

/** A client with a key of a workshop of its own. */
export async function clientOfNewWorkshop(
  origin: string,
  adminSecret: string,
): Promise<{ client: Slipmark; key: string }> {
  const admin = slipmark({ origin, key: adminSecret });
  const { body } = await admin.createWorkshop({ body: { id: 'open-items', name: 'Workshop of the open items' } });
  return { client: slipmark({ origin, key: body.key.secret }), key: body.key.secret };
}
