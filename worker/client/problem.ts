import type { Defect, Problem } from './generated/api.ts';

/** What is known of a call that failed. */
interface ProblemDetails extends Partial<Problem> {
  retryAfterS?: number | undefined;
}

/** Why a call failed: what the service said (RFC 9457), or that it could not be reached, which is status 0. */
export class SlipmarkProblem extends Error {
  /** 0 where there was no answer. */
  readonly status: number;
  /** `/problems/<kind>`; the kind is stable for ever. */
  readonly type: string;
  readonly title: string;
  readonly detail: string;
  /** Everything that is wrong with what was sent, with its place. */
  readonly findings: readonly Defect[];
  /** Where the JSON that was sent breaks off, from 1. */
  readonly line: number | undefined;
  readonly column: number | undefined;
  /** How long the service asks to wait. */
  readonly retryAfterS: number | undefined;
  /** The message, line by line: what was answered, and the first findings. */
  readonly lines: readonly string[];

  /** @param call method and path, as it was asked */
  constructor(call: string, particulars: ProblemDetails, options?: ErrorOptions) {
    const { status = 0, type = 'about:blank', title = '', detail = '', findings = [] } = particulars;
    const sentences = findings.slice(0, 3).map(({ sentence }) => `  ${sentence}`);
    const said = [title, detail].filter(Boolean).join(': ');
    const lines = [`${call}${status === 0 ? '' : ` answered ${status}`}: ${said}`, ...sentences];
    super(lines.join('\n'), options);
    this.lines = lines;
    this.name = 'SlipmarkProblem';
    this.status = status;
    this.type = type;
    this.title = title;
    this.detail = detail;
    this.findings = findings;
    this.line = particulars.line;
    this.column = particulars.column;
    this.retryAfterS = particulars.retryAfterS;
  }
}

/** The problem that an answer tells. Something that stands before the service may answer in words of its own. */
export function problemOf(call: string, { status, headers }: Response, text: string): SlipmarkProblem {
  const retryAfterS = retryAfter(headers);
  try {
    const problem = JSON.parse(text) as Problem;
    if (typeof problem.title === 'string') return new SlipmarkProblem(call, { ...problem, status, retryAfterS });
  } catch {
    // Not of the service: what was said is all that can be told.
  }
  return new SlipmarkProblem(call, { status, detail: text.slice(0, 200), retryAfterS });
}

/** Seconds that an answer asks to wait, given as a number or as a moment (RFC 9110, 10.2.3). */
export function retryAfter(headers: Headers): number | undefined {
  const asked = headers.get('Retry-After');
  if (asked === null) return undefined;
  const seconds = /^\d+$/.test(asked.trim()) ? Number(asked) : (Date.parse(asked) - Date.now()) / 1000;
  return Number.isNaN(seconds) ? undefined : Math.max(0, Math.ceil(seconds));
}

/** Undefined instead of the problem 404, for what may not be there. */
export async function ifThere<Given>(answer: Promise<Given>): Promise<Given | undefined> {
  const isMissing = (await refusalOf(answer, 404)) !== undefined;
  return isMissing ? undefined : answer;
}

/** The problem of one status that a call ends in, for what goes on without it; undefined where all went well. */
export async function refusalOf(call: Promise<unknown>, status: number): Promise<SlipmarkProblem | undefined> {
  try {
    await call;
    return undefined;
  } catch (error) {
    if (error instanceof SlipmarkProblem && error.status === status) return error;
    throw error;
  }
}
