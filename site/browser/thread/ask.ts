import type { ComparisonGroup, MomentRecord, Question, RecordQuestion, Reply, Sheet } from './protocol.ts';

/** Core on its own thread, as a page uses it. */
export interface Core {
  /** Returns the assessment of a record; undefined if a later question was sent in the meantime. */
  sheet(question: Omit<RecordQuestion, 'want'>): Promise<Sheet | undefined>;
  /** Drops all pending questions for a sheet. */
  drop(): void;
  /** Returns the unsealed pack, marked on every page. */
  pdf(question: Omit<RecordQuestion, 'want'>): Promise<Uint8Array<ArrayBuffer>>;
  /** Returns the differences between two records of one aircraft, computed by the same code. */
  comparison(before: MomentRecord, now: MomentRecord): Promise<ComparisonGroup[]>;
}

/** Starts the core. It takes one question after another; only the last sheet requested is delivered. */
export function startCore(): Core {
  const ask = startThread();
  let lastQuestion: object | undefined;
  return {
    async sheet(question) {
      lastQuestion = question;
      const answer = await ask({ want: 'sheet', ...question });
      return lastQuestion === question && 'sheet' in answer ? answer.sheet : undefined;
    },
    drop() {
      lastQuestion = undefined;
    },
    async pdf(question) {
      const answer = await ask({ want: 'pdf', ...question });
      if ('pdf' in answer) return answer.pdf;
      throw new Error('The record cannot be read: its findings say why');
    },
    async comparison(before, now) {
      const answer = await ask({ want: 'comparison', before, now });
      return 'comparison' in answer ? answer.comparison : [];
    },
  };
}

type Answer = Exclude<Reply, { failure: string }>;

const NOT_LOADED = 'The program that computes could not be loaded. Check the connection, then load this page again.';
const STOPPED = 'The program that computes has stopped. Load this page again.';
const NOT_UNDERSTOOD = 'An answer of the program that computes could not be read. Load this page again.';

/** Starts the thread: every question resolves, or rejects with a sentence for the page. */
function startThread(): (question: Question) => Promise<Answer> {
  const thread = new Worker('/assets/thread.js', { type: 'module' });
  const waiting = new Map<number, { resolve(answer: Answer): void; reject(error: Error): void }>();
  let lastId = 0;
  let hasAnswered = false;
  /** Reason why no question can be sent any more. */
  let failure: string | undefined;
  const failAll = (sentence: string): void => {
    for (const { reject } of waiting.values()) reject(new Error(sentence));
    waiting.clear();
  };
  thread.addEventListener('message', ({ data: { id, reply } }: MessageEvent<{ id: number; reply: Reply }>) => {
    hasAnswered = true;
    const asked = waiting.get(id);
    waiting.delete(id);
    if ('failure' in reply) asked?.reject(new Error(reply.failure));
    else asked?.resolve(reply);
  });
  // A script that does not load has no message.
  thread.addEventListener('error', () => {
    failure = hasAnswered ? STOPPED : NOT_LOADED;
    failAll(failure);
  });
  thread.addEventListener('messageerror', () => failAll(NOT_UNDERSTOOD));
  return (question) => {
    if (failure !== undefined) return Promise.reject(new Error(failure));
    const id = ++lastId;
    return new Promise((resolve, reject) => {
      waiting.set(id, { resolve, reject });
      thread.postMessage({ id, question });
    });
  };
}
