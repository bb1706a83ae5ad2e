import type { Job } from '../../record/visit.ts';
import { compareCodeUnits } from '../../units/compare-code-units.ts';
import type { PlacedJob } from './clock-result.ts';

/** An open job, and the open jobs that must end first. */
export interface OpenJob {
  job: Job;
  durationMin: number;
  before: string[];
}

/** Max. number of jobs for the search: above it the first schedule is kept, because estimates err by more than a better order saves. */
const MAX_TO_SEARCH = 12;
/**
 * Max. number of scheduling steps; the search then ends with the best order so far. A bound in work, not in time, so
 * that results repeat.
 */
const MAX_STEPS = 1000;

/**
 * Schedules jobs so that everything ends as early as possible; one person does one job at a time.
 *
 * The first schedule takes, of the jobs that can start earliest, the one with the longest path to the end. For a few
 * jobs a search then looks through other orders and skips every partial order that cannot end earlier than the best
 * one.
 *
 * @param nodes free of cycles
 * @source serial schedule generation with branch and bound (from memory)
 */
export function scheduleJobs(nodes: readonly OpenJob[]): PlacedJob[] {
  const tails = longestPathsToEnd(nodes);
  const placed = new Map<string, PlacedJob>();
  const freeAt = new Map<string, number>();
  let best: PlacedJob[] = [];
  let bestMin = Number.POSITIVE_INFINITY;
  let steps = 0;

  const earliest = ({ job, before }: OpenJob): number =>
    Math.max(freeAt.get(job.by ?? '') ?? 0, ...before.map((id) => placed.get(id)?.endMin ?? 0));
  const tailOf = ({ job }: OpenJob): number => tails.get(job.id) ?? 0;

  const search = (endMin: number): void => {
    const left = nodes.filter(({ job }) => !placed.has(job.id));
    if (left.length === 0) {
      best = [...placed.values()];
      bestMin = endMin;
      return;
    }
    const ready = left
      .filter(({ before }) => before.every((id) => placed.has(id)))
      .map((node) => ({ node, startMin: earliest(node) }))
      .sort(
        (a, b) =>
          a.startMin - b.startMin || tailOf(b.node) - tailOf(a.node) || compareCodeUnits(a.node.job.id, b.node.job.id),
      );
    for (const { node, startMin } of ready) {
      const isFirstOrder = bestMin === Number.POSITIVE_INFINITY;
      if (!isFirstOrder && (nodes.length > MAX_TO_SEARCH || steps > MAX_STEPS)) return;
      if (Math.max(endMin, ...left.map((other) => earliest(other) + tailOf(other))) >= bestMin) return;
      steps++;
      place(node, startMin, () => search(Math.max(endMin, startMin + node.durationMin)));
    }
  };

  /** Schedules a job during an attempt, and removes it again. */
  const place = ({ job, durationMin }: OpenJob, startMin: number, attempt: () => void): void => {
    const { id, text, by } = job;
    const wasFreeAt = freeAt.get(by ?? '') ?? 0;
    placed.set(id, { id, text, by, startMin, endMin: startMin + durationMin });
    if (by !== undefined) freeAt.set(by, startMin + durationMin);
    attempt();
    placed.delete(id);
    if (by !== undefined) freeAt.set(by, wasFreeAt);
  };

  search(0);
  return best;
}

/** Returns the longest path from the start of each job to the end of all jobs that depend on it. */
function longestPathsToEnd(nodes: readonly OpenJob[]): Map<string, number> {
  const tails = new Map<string, number>();
  const tail = (node: OpenJob): number => {
    const known = tails.get(node.job.id);
    if (known !== undefined) return known;
    const after = nodes.filter(({ before }) => before.includes(node.job.id));
    const length = node.durationMin + Math.max(0, ...after.map(tail));
    tails.set(node.job.id, length);
    return length;
  };
  for (const node of nodes) tail(node);
  return tails;
}
