import type { ComparisonGroup, MomentRecord, Question, RecordQuestion, Reply, Sheet } from './protocol.ts';

/** The core on its own thread, as a page asks it. */
export interface Core {
  /** What the core makes of a record; undefined where a later question was asked meanwhile. */
  sheet(question: Omit<RecordQuestion, 'want'>): Promise<Sheet | undefined>;
  /** No sheet that was asked for so far is wanted any more. */
  drop(): void;
  /** The pack as it would be, marked on every page. */
  pdf(question: Omit<RecordQuestion, 'want'>): Promise<Uint8Array<ArrayBuffer>>;
  /** What differs between two records of one aircraft, worked out by the same code. */
  comparison(before: MomentRecord, now: MomentRecord): Promise<ComparisonGroup[]>;
}

/** Starts the core. It answers one question after another; of sheets only the one asked for last is given out. */
export function startCore(): Core {
  const thread = new Worker('/assets/core.js', { type: 'module' });
  const waiting = new Map<number, (reply: Reply) => void>();
  let lastId = 0;
  let lastSheet = 0;
  thread.addEventListener('message', ({ data }: MessageEvent<{ id: number; reply: Reply }>) => {
    waiting.get(data.id)?.(data.reply);
    waiting.delete(data.id);
  });
  const ask = (question: Question): { id: number; reply: Promise<Reply> } => {
    const id = ++lastId;
    const reply = new Promise<Reply>((resolve) => waiting.set(id, resolve));
    thread.postMessage({ id, question });
    return { id, reply };
  };
  return {
    async sheet(question) {
      const { id, reply } = ask({ want: 'sheet', ...question });
      lastSheet = id;
      const answer = given(await reply);
      return id === lastSheet && 'sheet' in answer ? answer.sheet : undefined;
    },
    drop() {
      lastSheet = 0;
    },
    async pdf(question) {
      const answer = given(await ask({ want: 'pdf', ...question }).reply);
      if ('pdf' in answer) return answer.pdf;
      throw new Error('The record cannot be read: its findings say why');
    },
    async comparison(before, now) {
      const answer = given(await ask({ want: 'comparison', before, now }).reply);
      return 'comparison' in answer ? answer.comparison : [];
    },
  };
}

/** @throws Error with what went wrong in the core */
function given(reply: Reply): Exclude<Reply, { failure: string }> {
  if ('failure' in reply) throw new Error(reply.failure);
  return reply;
}
