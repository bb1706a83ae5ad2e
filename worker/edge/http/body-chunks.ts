import { HttpProblem } from './problem.ts';

/**
 * The body of a request in pieces, counted while they come, because a body sent in chunks does not announce its length.
 *
 * @throws Refusal 413, and 400 when the client breaks off
 */
export async function* bodyChunks(request: Request, maxBytes: number): AsyncGenerator<Uint8Array> {
  const tooLarge = () => new HttpProblem('body-too-large', `The body must be at most ${maxBytes} bytes`);
  if (Number(request.headers.get('Content-Length') ?? 0) > maxBytes) throw tooLarge();
  let bytes = 0;
  try {
    for await (const chunk of request.body ?? []) {
      bytes += chunk.length;
      if (bytes > maxBytes) throw tooLarge();
      yield chunk;
    }
  } catch (error) {
    // Whoever sent it may be gone: no failure of ours, whatever the platform throws.
    throw error instanceof HttpProblem
      ? error
      : new HttpProblem('malformed-request', 'The body broke off before its end');
  }
}
