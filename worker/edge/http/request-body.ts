import type * as z from 'zod';
import { LIMITS } from '../../core/limits.ts';
import { pointer } from '../../core/record/pointer.ts';
import { type Defect, HttpProblem } from './problem.ts';
import { readJson } from './read-json.ts';

/**
 * Reads the JSON body of a call other than a record.
 *
 * @throws HttpProblem 422 with every defect
 */
export async function requestBody<Schema extends z.ZodType>(
  request: Request,
  schema: Schema,
  maxBytes: number = LIMITS.bodyBytes,
): Promise<z.infer<Schema>> {
  const { value } = await readJson(request, 'application/json', maxBytes);
  const parsed = schema.safeParse(value);
  if (parsed.success) return parsed.data;
  const { issues } = parsed.error;
  const count = issues.reduce((sum, issue) => sum + (issue.code === 'unrecognized_keys' ? issue.keys.length : 1), 0);
  throw new HttpProblem('request-not-valid', `${count} defects`, { findings: defectsOf(issues, LIMITS.recordIssues) });
}

// Texts are made only for the defects that are reported.
function defectsOf(issues: readonly z.core.$ZodIssue[], most: number): Defect[] {
  const defects: Defect[] = [];
  for (const issue of issues) {
    const left = most - defects.length;
    if (left === 0) break;
    if (issue.code === 'unrecognized_keys')
      for (const key of issue.keys.slice(0, left))
        defects.push(defect('REQUEST_KEY_UNKNOWN', pointer(...issue.path, key), 'There is no such field'));
    else defects.push(defect('REQUEST_VALUE_WRONG', pointer(...issue.path), issue.message));
  }
  return defects;
}

/** Returns a defect in the body of a call. */
export function defect(code: string, at: string, sentence: string): Defect {
  return { code, severity: 'blocks', pointer: at, sentence, remedy: 'Correct it; /v1/openapi.json describes the call' };
}
