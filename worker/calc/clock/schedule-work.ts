import { byText } from '../../units/order.ts';
import type { Job } from '../../visit/visit.ts';

/** A job set into time: minutes from now. */
export interface PlannedJob {
  id: string;
  text: string;
  by: string | undefined;
  startMin: number;
  endMin: number;
  /** It decides when everything is done: a minute more here is a minute more at the end. */
  isCritical: boolean;
}

export interface WorkPlan {
  jobs: PlannedJob[];
  totalMin: number;
  /** The one thing to do next. */
  next: PlannedJob | undefined;
  /** Jobs that wait for each other in a circle, so that none can begin. */
  circle: string[];
}

interface Node {
  job: Job;
  durationMin: number;
  before: string[];
}

/**
 * What is left of the worksheet over people and dependencies. A person does one job at a time; a job without a person
 * needs nobody. Of the jobs that can start, the one with the longest way to the end goes first.
 *
 * @source serial schedule generation with the longest-path rule; with people unlimited it is the critical path method (from memory)
 */
export function planWork(worksheet: readonly Job[]): WorkPlan {
  const open = worksheet.filter(({ state }) => state === 'in-hand' || state === 'waiting');
  const ids = new Set(open.map(({ id }) => id));
  const nodes = open.map(
    (job): Node => ({ job, durationMin: job.minutesLeft ?? 0, before: (job.after ?? []).filter((id) => ids.has(id)) }),
  );
  const circle = circleIn(nodes);
  if (circle.length > 0) return { jobs: [], totalMin: 0, next: undefined, circle };
  const tails = tailLengths(nodes);
  const placed = placeAll(nodes, tails);
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

/** Jobs left when everything that can be ordered has been taken away. */
function circleIn(nodes: readonly Node[]): string[] {
  let left = [...nodes];
  for (;;) {
    const ids = new Set(left.map(({ job }) => job.id));
    const rest = left.filter(({ before }) => before.some((id) => ids.has(id)));
    if (rest.length === left.length) return rest.map(({ job }) => job.id);
    left = rest;
  }
}

/** Longest way from the start of each job to the end of everything that waits for it. */
function tailLengths(nodes: readonly Node[]): Map<string, number> {
  const tails = new Map<string, number>();
  const tail = (node: Node): number => {
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

type Placed = Omit<PlannedJob, 'isCritical'>;

function placeAll(nodes: readonly Node[], tails: ReadonlyMap<string, number>): Placed[] {
  const placed = new Map<string, Placed>();
  const freeAt = new Map<string, number>();
  while (placed.size < nodes.length) {
    const ready = nodes.filter(({ job, before }) => !placed.has(job.id) && before.every((id) => placed.has(id)));
    const earliest = (node: Node): number =>
      Math.max(freeAt.get(node.job.by ?? '') ?? 0, 0, ...node.before.map((id) => placed.get(id)?.endMin ?? 0));
    const chosen = ready.sort(
      (a, b) =>
        earliest(a) - earliest(b) ||
        (tails.get(b.job.id) ?? 0) - (tails.get(a.job.id) ?? 0) ||
        byText(a.job.id, b.job.id),
    )[0];
    if (!chosen) break;
    const startMin = earliest(chosen);
    const endMin = startMin + chosen.durationMin;
    const { id, text, by } = chosen.job;
    placed.set(id, { id, text, by, startMin, endMin });
    if (by !== undefined) freeAt.set(by, endMin);
  }
  return [...placed.values()];
}

/** Walks back from what ends last, through whatever had to end first: a job before it, or the same person's last job. */
function criticalIds(nodes: readonly Node[], placed: readonly Placed[], totalMin: number): Set<string> {
  const critical = new Set<string>();
  const follow = (job: Placed): void => {
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
