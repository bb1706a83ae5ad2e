import { LIMITS } from '../../core/limits.ts';
import { bodyChunks } from './body-chunks.ts';
import { jsonFault } from './json-fault.ts';
import { structuralDefects } from './json-structure.ts';
import { HttpProblem } from './problem.ts';

/** JSON body: the value, and its text. */
export interface JsonBody {
  value: unknown;
  text: string;
}

/**
 * Reads the JSON body of a request: checks the media type first, then the size while reading, then the structure.
 *
 * @throws HttpProblem 415, 413, 400 with line and column, or 422 for what JSON allows but a record must not have
 */
export async function readJson(
  request: Request,
  type = 'application/json',
  maxBytes: number = LIMITS.bodyBytes,
): Promise<JsonBody> {
  checkType(request, type);
  const text = await readText(request, maxBytes);
  const defects = structuralDefects(text);
  const tooDeep = defects.filter(({ code }) => code === 'JSON_TOO_DEEP');
  if (tooDeep.length > 0) throw notValid(tooDeep);
  const value = parse(text);
  if (defects.length > 0) throw notValid(defects);
  return { value, text };
}

function checkType(request: Request, type: string): void {
  const given = request.headers.get('Content-Type')?.split(';')[0]?.trim().toLowerCase();
  const coding = request.headers.get('Content-Encoding')?.trim().toLowerCase() ?? 'identity';
  if (given === type && coding === 'identity') return;
  const found = given === type ? `Content-Encoding ${coding}` : (given ?? 'none');
  throw new HttpProblem(
    'unsupported-media-type',
    `Content-Type must be ${type}, not encoded: current value is ${found}`,
    {
      headers: request.method === 'PATCH' ? { 'Accept-Patch': type } : { Accept: type },
    },
  );
}

async function readText(request: Request, maxBytes: number): Promise<string> {
  const decoder = new TextDecoder('utf-8', { fatal: true });
  let text = '';
  for await (const chunk of bodyChunks(request, maxBytes))
    text += decoded(() => decoder.decode(chunk, { stream: true }));
  return text + decoded(() => decoder.decode());
}

function decoded(decode: () => string): string {
  try {
    return decode();
  } catch {
    throw new HttpProblem('malformed-json', 'The body must be UTF-8');
  }
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    throw malformed(text);
  }
}

function malformed(text: string): HttpProblem {
  const { what, at } = jsonFault(text);
  const place = `line ${at.line}, column ${at.column}`;
  return new HttpProblem('malformed-json', `The body must be JSON: ${what} at ${place}`, { at });
}

const notValid = (findings: readonly object[]) =>
  new HttpProblem('record-not-valid', 'The JSON is not of a form that a record can have', { findings });
