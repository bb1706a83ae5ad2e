import * as z from 'zod';
import { orUndefined } from '../numbers/result-field.ts';

/** Start and end of a job, in minutes from now. */
export const PlacedJob = z.object({
  id: z.string(),
  text: z.string(),
  by: orUndefined(z.string()),
  startMin: z.number(),
  endMin: z.number(),
});
export type PlacedJob = z.infer<typeof PlacedJob>;

/** A scheduled job. */
export const PlannedJob = PlacedJob.extend({
  /** On the critical path: a delay of one minute delays the end by one minute. */
  isCritical: z.boolean(),
});
export type PlannedJob = z.infer<typeof PlannedJob>;

export const WorkPlan = z.object({
  jobs: z.array(PlannedJob),
  totalMin: z.number(),
  next: orUndefined(PlannedJob).describe('The one thing to do next'),
  /** Jobs that depend on each other in a cycle, so that none can begin. */
  circle: z.array(z.string()),
});
export type WorkPlan = z.infer<typeof WorkPlan>;

/** Earliest release, and the time left before the departure. */
export const ReleaseClock = z.object({
  plan: WorkPlan,
  /** Time of the assessment plus the remaining work. */
  readyAt: z.string(),
  /** Minutes from the end of work to the latest take-off; negative if too late. Undefined without a departure. */
  slackMin: orUndefined(z.number()),
  arrivalAt: orUndefined(z.string()),
  sunsetAt: orUndefined(z.string()),
  /** Minutes from arrival to sunset at the destination; undefined if the sun does not set or rise that day. */
  daylightMin: orUndefined(z.number()),
  /** The sun is below the horizon at the arrival. */
  isDarkAtArrival: orUndefined(z.boolean()),
});
export type ReleaseClock = z.infer<typeof ReleaseClock>;
