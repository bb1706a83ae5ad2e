import { assess, seal } from '../../worker/core/core.ts';

/** A Worker for the bench alone: runs one stage as often as it is told, so that the time of many runs can be taken from outside. */
interface Order {
  stage: 'assess' | 'seal';
  runs: number;
  at: string;
  record: { release: { by: string } };
}

export default {
  async fetch(request: Request): Promise<Response> {
    const { stage, runs, at, record } = (await request.json()) as Order;
    for (let run = 0; run < runs; run++) {
      const outcome = await assess(record, at);
      if (!outcome.ok) return new Response('The record does not fit the schema', { status: 422 });
      if (stage === 'assess') continue;
      const attestation = { by: record.release.by, knowsOfNoHazard: true, at, read: outcome.assessed.assessmentSha256 };
      const sealed = await seal(outcome.assessed, attestation, {
        pack: 'BENCH-P1-1',
        number: 1,
        issue: 1,
        visit: 'bench',
        before: [],
      });
      if (!sealed.ok) return new Response('The visit is not releasable', { status: 409 });
    }
    return new Response('done');
  },
};
