import type { Job } from '../../record/visit.ts';
import type { PlacedJob, WorkPlan } from './clock-result.ts';
import { type OpenJob, scheduleJobs } from './schedule-jobs.ts';

/**
 * Schedules the remaining jobs over people and dependencies. A person does one job at a time; a job without a person
 * needs nobody. With unlimited people this is the critical path method.
 *
 * @source critical path method (from memory)
 */
export function planWork(worksheet: readonly Job[]): WorkPlan {
  const open = worksheet.filter(({ state }) => state === 'in-hand' || state === 'waiting');
  const ids = new Set(open.map(({ id }) => id));
  const nodes = open.map(
    (job): OpenJob => ({
      job,
      durationMin: job.minutesLeft ?? 0,
      before: (job.after ?? []).filter((id) => ids.has(id)),
    }),
  );
  const circle = circleIn(nodes);
  if (circle.length > 0) return { jobs: [], totalMin: 0, next: undefined, circle };
  const placed = scheduleJobs(nodes);
  const totalMin = Math.max(0, ...placed.map(({ endMin }) => endMin));
  const critical = criticalIds(nodes, placed, totalMin);
  const jobs = placed
    .map((job) => ({ ...job, isCritical: critical.has(job.id) }))
    .sort((a, b) => a.startMin - b.startMin);
  return {
    jobs,
    totalMin,
    next: jobs.find(({ isCritical, startMin }) => isCritical && startMin === 0) ?? jobs[0],
    circle,
  };
}

/** Returns the jobs that remain after every job that can be ordered is removed. */
function circleIn(nodes: readonly OpenJob[]): string[] {
  let left = [...nodes];
  for (;;) {
    const ids = new Set(left.map(({ job }) => job.id));
    const rest = left.filter(({ before }) => before.some((id) => ids.has(id)));
    if (rest.length === left.length) return rest.map(({ job }) => job.id);
    left = rest;
  }
}

/** Walks back from the job that ends last, through every job that had to end first: a dependency, or the same person's previous job. */
function criticalIds(nodes: readonly OpenJob[], placed: readonly PlacedJob[], totalMin: number): Set<string> {
  const critical = new Set<string>();
  const follow = (job: PlacedJob): void => {
    if (critical.has(job.id)) return;
    critical.add(job.id);
    const before = nodes.find((node) => node.job.id === job.id)?.before ?? [];
    for (const other of placed) {
      const isHeldBy = before.includes(other.id) || (other.by !== undefined && other.by === job.by);
      if (other.id !== job.id && isHeldBy && other.endMin === job.startMin) follow(other);
    }
  };
  for (const job of placed) if (job.endMin === totalMin) follow(job);
  return critical;
}
