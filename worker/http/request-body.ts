import type * as z from 'zod';
import { LIMITS } from '../limits.ts';
import { pointer } from '../visit/pointer.ts';
import { type Defect, Refusal } from './problem.ts';
import { readJson } from './read-json.ts';

/**
 * The JSON body of a call other than a record.
 *
 * @throws Refusal 422 with every defect
 */
export async function requestBody<Schema extends z.ZodType>(
  request: Request,
  schema: Schema,
  mostBytes: number = LIMITS.bodyBytes,
): Promise<z.infer<Schema>> {
  const { value } = await readJson(request, 'application/json', mostBytes);
  const parsed = schema.safeParse(value);
  if (parsed.success) return parsed.data;
  const findings = parsed.error.issues.flatMap(defectsOf);
  throw new Refusal('request-not-valid', `${findings.length} defects`, {
    findings: findings.slice(0, LIMITS.recordIssues),
  });
}

function defectsOf(issue: z.core.$ZodIssue): Defect[] {
  if (issue.code === 'unrecognized_keys')
    return issue.keys.map((key) =>
      defect('REQUEST_KEY_UNKNOWN', pointer(...issue.path, key), 'There is no such field'),
    );
  return [defect('REQUEST_VALUE_WRONG', pointer(...issue.path), issue.message)];
}

/** One thing that is wrong in the body of a call. */
export function defect(code: string, at: string, sentence: string): Defect {
  return { code, severity: 'blocks', pointer: at, sentence, remedy: 'Correct it; /v1/openapi.json describes the call' };
}
