import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planWork } from '../../../../worker/core/calc/clock/schedule-work.ts';
import type { Job } from '../../../../worker/core/record/visit.ts';
import { RUNS } from '../../../property-runs.ts';

const job = (id: string, minutesLeft: number, after: string[] = [], by?: string): Job => ({
  id,
  text: `Job ${id}`,
  state: 'waiting',
  minutesLeft,
  after,
  ...(by && { by }),
});

/** Jobs that wait only for earlier ones, so never in a circle. */
const worksheets = (most: number) =>
  fc
    .array(
      fc.record({
        minutesLeft: fc.integer({ min: 0, max: 90 }),
        by: fc.constantFrom('mila', 'jonas', undefined),
        waits: fc.array(fc.nat(most), { maxLength: 3 }),
      }),
      { minLength: 1, maxLength: most },
    )
    .map((jobs) =>
      jobs.map(({ minutesLeft, by, waits }, index) =>
        job(
          `J${index}`,
          minutesLeft,
          [...new Set(waits)].filter((other) => other < index).map((other) => `J${other}`),
          by,
        ),
      ),
    );

/** Length of the longest chain of jobs that wait for each other. */
function criticalPathMin(jobs: readonly Job[]): number {
  const ends = new Map<string, number>();
  for (const { id, minutesLeft = 0, after = [] } of jobs)
    ends.set(id, minutesLeft + Math.max(0, ...after.map((other) => ends.get(other) ?? 0)));
  return Math.max(0, ...ends.values());
}

/** The earliest end over every order in which the jobs can be begun. */
function bruteForceMin(
  jobs: readonly Job[],
  ends = new Map<string, number>(),
  free = new Map<string, number>(),
): number {
  const left = jobs.filter(({ id }) => !ends.has(id));
  if (left.length === 0) return Math.max(0, ...ends.values());
  const ready = left.filter(({ after = [] }) => after.every((id) => ends.has(id)));
  return Math.min(
    ...ready.map(({ id, minutesLeft = 0, after = [], by }) => {
      const start = Math.max(0, (by && free.get(by)) || 0, ...after.map((other) => ends.get(other) ?? 0));
      const end = start + minutesLeft;
      return bruteForceMin(jobs, new Map([...ends, [id, end]]), by ? new Map([...free, [by, end]]) : free);
    }),
  );
}

describe('planWork()', () => {
  test('keeps every person to one job at a time, and every job behind what it waits for', () => {
    fc.assert(
      fc.property(worksheets(30), (worksheet) => {
        const { jobs } = planWork(worksheet);
        expect(jobs).toHaveLength(worksheet.length);
        for (const { id, startMin, endMin, by } of jobs) {
          const { after = [], minutesLeft } = worksheet.find((entry) => entry.id === id) ?? {};
          expect(endMin - startMin).toBe(minutesLeft);
          for (const other of jobs) {
            if (after.includes(other.id)) expect(other.endMin).toBeLessThanOrEqual(startMin);
            const isOverlap = other.startMin < endMin && startMin < other.endMin;
            if (other.id !== id && by && other.by === by) expect(isOverlap, `${id} and ${other.id}`).toBe(false);
          }
        }
      }),
      RUNS,
    );
  });

  test('takes as long as the critical path at least and as all jobs together at most', () => {
    fc.assert(
      fc.property(worksheets(30), (worksheet) => {
        const { totalMin } = planWork(worksheet);
        expect(totalMin).toBeGreaterThanOrEqual(criticalPathMin(worksheet));
        expect(totalMin).toBeLessThanOrEqual(worksheet.reduce((sum, { minutesLeft = 0 }) => sum + minutesLeft, 0));
      }),
      RUNS,
    );
  });

  test('is the critical path where nobody is named', () => {
    fc.assert(
      fc.property(worksheets(30), (worksheet) => {
        const free = worksheet.map(({ by: _by, ...rest }) => rest);
        expect(planWork(free).totalMin).toBe(criticalPathMin(free));
      }),
      RUNS,
    );
  });

  test('ends as early as the best of all orders of a few jobs', () => {
    fc.assert(
      fc.property(worksheets(6), (worksheet) => {
        expect(planWork(worksheet).totalMin).toBe(bruteForceMin(worksheet));
      }),
      RUNS,
    );
  });

  test('marks a chain of jobs without a gap from now to the end as critical', () => {
    fc.assert(
      fc.property(worksheets(12), (worksheet) => {
        const { jobs, totalMin } = planWork(worksheet);
        const critical = jobs.filter(({ isCritical }) => isCritical);
        expect(critical.some(({ endMin }) => endMin === totalMin)).toBe(true);
        expect(critical.some(({ startMin }) => startMin === 0)).toBe(true);
        for (const { startMin } of critical)
          expect(startMin === 0 || critical.some(({ endMin }) => endMin === startMin)).toBe(true);
      }),
      RUNS,
    );
  });

  test('leaves out what is done or declined, and does not wait for it', () => {
    const done: Job = { ...job('A', 500), state: 'done' };
    const declined: Job = { ...job('B', 500), state: 'declined' };
    const { jobs, totalMin } = planWork([done, declined, job('C', 20, ['A', 'B'])]);
    expect([jobs.map(({ id }) => id), totalMin]).toEqual([['C'], 20]);
  });

  test('names the jobs of a circle and what waits for it, and plans nothing', () => {
    const plan = planWork([job('A', 1, ['B']), job('B', 1, ['A']), job('C', 1)]);
    expect(plan).toMatchObject({ circle: ['A', 'B'], jobs: [], totalMin: 0, next: undefined });
  });

  test('says to do next what everything else waits for', () => {
    expect(planWork([job('SHORT', 5, [], 'mila'), job('LONG', 60, [], 'jonas')]).next?.id).toBe('LONG');
  });
});
