import { expect } from 'vitest';

const POINTER = /^(\/([^~/]|~[01])*)*$/u;

/** Problems whose findings say what is wrong where. */
const WITH_FINDINGS = ['/problems/record-not-valid', '/problems/request-not-valid', '/problems/release-blocked'];

interface Body {
  type: string;
  title: string;
  status: number;
  detail: string;
  findings: { code: string; severity: string; pointer: string; sentence: string; remedy: string }[];
}

/**
 * What every answer must be, whatever was asked: no failure of ours, safe headers, and of an error a problem that says
 * what is wrong where.
 *
 * @param what the request in words, for the message
 */
export async function expectSound(response: Response, what: string): Promise<void> {
  const text = await response.text();
  const { status, headers } = response;
  expect(status, `${what}: ${text.slice(0, 300)}`).toBeLessThan(500);
  expect(headers.get('X-Content-Type-Options'), what).toBe('nosniff');
  expect(headers.get('Content-Security-Policy'), what).toMatch(/frame-ancestors 'none'/);
  expect(headers.has('X-Injected'), what).toBe(false);
  if (status < 400 || (status === 404 && headers.get('Content-Type')?.startsWith('text/html'))) return;
  if (text === '') return;
  expect(headers.get('Content-Type'), what).toBe('application/problem+json');
  expectProblem(JSON.parse(text) as Body, status, what);
}

function expectProblem({ type, title, detail, findings, ...body }: Body, status: number, what: string): void {
  expect(body.status, what).toBe(status);
  for (const words of [type, title, detail]) expect(words, what).toMatch(/\S/);
  if (WITH_FINDINGS.includes(type)) expect(findings.length, what).toBeGreaterThan(0);
  for (const { code, pointer, sentence, remedy } of findings) {
    expect(code, what).toMatch(/^[A-Z][A-Z0-9_]+$/);
    expect(pointer, what).toMatch(POINTER);
    for (const words of [sentence, remedy]) expect(words, what).toMatch(/\S/);
  }
}
