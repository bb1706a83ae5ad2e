import * as z from 'zod';
import { orUndefined } from '../numbers/result-field.ts';

/** When a job is done: minutes from now. */
export const PlacedJob = z.object({
  id: z.string(),
  text: z.string(),
  by: orUndefined(z.string()),
  startMin: z.number(),
  endMin: z.number(),
});
export type PlacedJob = z.infer<typeof PlacedJob>;

/** A job set into time. */
export const PlannedJob = PlacedJob.extend({
  /** It decides when everything is done: a minute more here is a minute more at the end. */
  isCritical: z.boolean(),
});
export type PlannedJob = z.infer<typeof PlannedJob>;

export const WorkPlan = z.object({
  jobs: z.array(PlannedJob),
  totalMin: z.number(),
  next: orUndefined(PlannedJob).describe('The one thing to do next'),
  /** Jobs that wait for each other in a circle, so that none can begin. */
  circle: z.array(z.string()),
});
export type WorkPlan = z.infer<typeof WorkPlan>;

/** When the aircraft can be released, and what that leaves before the departure. */
export const ReleaseClock = z.object({
  plan: WorkPlan,
  /** The time of the assessment and what is left of the work. */
  readyAt: z.string(),
  /** Minutes between being ready and the latest take-off; negative when too late. None without a departure. */
  slackMin: orUndefined(z.number()),
  arrivalAt: orUndefined(z.string()),
  sunsetAt: orUndefined(z.string()),
  /** Minutes between arrival and sunset at the destination; none where the sun does not set or rise that day. */
  daylightMin: orUndefined(z.number()),
  /** Whether the sun is below the horizon at the arrival. */
  isDarkAtArrival: orUndefined(z.boolean()),
});
export type ReleaseClock = z.infer<typeof ReleaseClock>;
