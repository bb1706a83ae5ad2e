import * as z from 'zod';
import { orUndefined } from '../result-field.ts';

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
  isCritical: z
    .boolean()
    .describe('It decides when everything is done: a minute more here is a minute more at the end'),
});
export type PlannedJob = z.infer<typeof PlannedJob>;

export const WorkPlan = z.object({
  jobs: z.array(PlannedJob),
  totalMin: z.number(),
  next: orUndefined(PlannedJob).describe('The one thing to do next'),
  circle: z.array(z.string()).describe('Jobs that wait for each other in a circle, so that none can begin'),
});
export type WorkPlan = z.infer<typeof WorkPlan>;

/** When the aircraft can be released, and what that leaves before the departure. */
export const ReleaseClock = z.object({
  plan: WorkPlan,
  readyAt: z.string().describe('The time of the assessment and what is left of the work'),
  slackMin: orUndefined(z.number()).describe(
    'Minutes between being ready and the latest take-off; negative when too late. None without a departure',
  ),
  arrivalAt: orUndefined(z.string()),
  sunsetAt: orUndefined(z.string()),
  daylightMin: orUndefined(z.number()).describe(
    'Minutes between arrival and sunset at the destination; none where the sun does not set or rise that day',
  ),
  isDarkAtArrival: orUndefined(z.boolean()).describe('Whether the sun is below the horizon at the arrival'),
});
export type ReleaseClock = z.infer<typeof ReleaseClock>;
