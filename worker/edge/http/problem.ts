import * as z from 'zod';
import { LIMITS } from '../../core/limits.ts';
import { PROBLEM_KINDS, type ProblemKind } from './problem-kinds.ts';

/** Defect, with its place in the request. */
export const Defect = z
  .object({
    code: z.string(),
    severity: z.enum(['blocks', 'caution', 'note']),
    pointer: z.string().meta({ description: 'JSON pointer (RFC 6901) into the request body' }),
    sentence: z.string(),
    remedy: z.string(),
    follows: z
      .object({ code: z.string(), pointer: z.string() })
      .optional()
      .meta({ description: 'Finding of which this is another place or a consequence: it is dealt with first' }),
  })
  .loose()
  .meta({ title: 'Defect' });
export type Defect = z.infer<typeof Defect>;

/** Body of an error response (RFC 9457). */
export const Problem = z
  .object({
    type: z.string().meta({ examples: ['/problems/record-not-valid'] }),
    title: z.string(),
    status: z.int(),
    detail: z.string(),
    findings: z.array(Defect),
    line: z.int().optional().meta({ description: 'Line at which the JSON breaks off, from 1' }),
    column: z.int().optional(),
  })
  .meta({ title: 'Problem' });
export type Problem = z.infer<typeof Problem>;

interface ProblemDetails {
  findings?: readonly object[];
  at?: { line: number; column: number };
  headers?: Readonly<Record<string, string>>;
}

/**
 * Ends the handling of a request with a problem. Thrown only in this folder, and turned into a response in one place.
 */
export class HttpProblem extends Error {
  readonly kind: ProblemKind;
  readonly particulars: ProblemDetails;

  constructor(kind: ProblemKind, detail: string, particulars: ProblemDetails = {}) {
    super(detail);
    this.kind = kind;
    this.particulars = particulars;
  }
}

/** Returns the response to a refused request. */
export function problemResponse({ kind, message, particulars }: HttpProblem): Response {
  const { status, title } = PROBLEM_KINDS[kind];
  const { findings = [], at, headers = {} } = particulars;
  const body = { type: `/problems/${kind}`, title, status, detail: message, findings, ...at };
  return new Response(`${JSON.stringify(body, null, 2)}\n`, {
    status,
    headers: {
      'Content-Type': 'application/problem+json',
      'Cache-Control': 'no-store',
      ...headersOf(kind),
      ...headers,
    },
  });
}

function headersOf(kind: ProblemKind): Record<string, string> {
  if (kind === 'unauthorized') return { 'WWW-Authenticate': 'Bearer realm="slipmark"' };
  if (kind === 'unavailable') return { 'Retry-After': String(LIMITS.retryAfterSeconds) };
  return {};
}
