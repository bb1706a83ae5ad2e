import { sunsetFor } from '../../worker/core/calc/clock/daylight.ts';
import { planWork } from '../../worker/core/calc/clock/schedule-work.ts';
import { dueList, type Life } from '../../worker/core/calc/lives/due.ts';
import type { Job } from '../../worker/core/record/visit.ts';
import { readVisit, SETTINGS } from './read-visit.ts';

/** For each job its duration, what it waits for, and who does it. */
type Jobs = Record<string, [durationMin: number, after: string[], by?: string]>;

export const CLOCK_TOPICS = {
  /** A line of the due list: day, month and year, or hours. */
  due: (input: Pick<Life, 'interval' | 'lastDone' | 'wasDueAt'>) => {
    const record = { items: [{ id: 'L', item: 'Case', basis: 'programme' as const, ...input }] };
    const [due] = dueList(readVisit('nose-wheel-full'), record, SETTINGS.at);
    const [year = Number.NaN, month = Number.NaN, day = Number.NaN] = (due?.dueDate ?? '').split('-').map(Number);
    return { year, month, day, hours: due?.dueHours ?? Number.NaN };
  },

  /** How long the work takes, and which jobs decide it: 1 for yes, 0 for no. */
  plan: ({ jobs }: { jobs: Jobs }) => {
    const worksheet: Job[] = Object.entries(jobs).map(([id, [minutesLeft, after, by]]) => ({
      id,
      text: id,
      state: 'waiting',
      minutesLeft,
      after,
      ...(by && { by }),
    }));
    const plan = planWork(worksheet);
    const critical = plan.jobs.map(({ id, isCritical }) => [`isCritical${id}`, isCritical ? 1 : 0]);
    return { total: plan.totalMin, ...Object.fromEntries(critical) };
  },

  /** Minutes from a moment by day to the sunset that ends it. */
  sunset: ({ latitude, longitude, from }: { latitude: number; longitude: number; from: string }) => ({
    minutes: sunsetFor({ latitudeDeg: latitude, longitudeDeg: longitude }, from)?.minutesLeft ?? Number.NaN,
  }),
};
