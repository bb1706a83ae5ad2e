import type { Defect, Problem } from './generated/api.ts';

/** Details of a failed call. */
interface ProblemDetails extends Partial<Problem> {
  retryAfterS?: number | undefined;
}

/**
 * Reason why a call failed: the problem that the service returned (RFC 9457), or status 0 if it could not be reached.
 */
export class SlipmarkProblem extends Error {
  /** HTTP status; 0 if there was no response. */
  readonly status: number;
  /** `/problems/<kind>`; the kind never changes. */
  readonly type: string;
  readonly title: string;
  readonly detail: string;
  /** Defects of the request, each with its place. */
  readonly findings: readonly Defect[];
  /** Line at which the JSON of the request breaks off, from 1. */
  readonly line: number | undefined;
  readonly column: number | undefined;
  /** Seconds to wait, as the service requires. */
  readonly retryAfterS: number | undefined;
  /** Lines of the message: the response and the first findings. */
  readonly lines: readonly string[];

  /** @param call method and path of the request */
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

/** Returns the problem in a response. A proxy in front of the service may respond in another format. */
export function problemOf(call: string, { status, headers }: Response, text: string): SlipmarkProblem {
  const retryAfterS = retryAfter(headers);
  try {
    const problem = JSON.parse(text) as Problem;
    if (typeof problem.title === 'string') return new SlipmarkProblem(call, { ...problem, status, retryAfterS });
  } catch {
    // Not from the service: only the response as received can be reported.
  }
  return new SlipmarkProblem(call, { status, detail: text.slice(0, 200), retryAfterS });
}

/** Returns the seconds to wait, from a number or a timestamp (RFC 9110, 10.2.3). */
export function retryAfter(headers: Headers): number | undefined {
  const asked = headers.get('Retry-After');
  if (asked === null) return undefined;
  const seconds = /^\d+$/.test(asked.trim()) ? Number(asked) : (Date.parse(asked) - Date.now()) / 1000;
  return Number.isNaN(seconds) ? undefined : Math.max(0, Math.ceil(seconds));
}

/** Returns undefined instead of throwing the problem 404, for things that may not exist. */
export async function ifThere<Given>(answer: Promise<Given>): Promise<Given | undefined> {
  const isMissing = (await refusalOf(answer, 404)) !== undefined;
  return isMissing ? undefined : answer;
}

/**
 * Returns the problem with a certain status, if the call ends in it, so that the caller can continue; undefined if the
 * call succeeds.
 */
export async function refusalOf(call: Promise<unknown>, status: number): Promise<SlipmarkProblem | undefined> {
  try {
    await call;
    return undefined;
  } catch (error) {
    if (error instanceof SlipmarkProblem && error.status === status) return error;
    throw error;
  }
}
