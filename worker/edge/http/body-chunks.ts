import { HttpProblem } from './problem.ts';

/**
 * Yields the body of a request in pieces, counted as they come, because a chunked body does not announce its length.
 *
 * @throws HttpProblem 413, and 400 if the client breaks off
 */
export async function* bodyChunks(request: Request, maxBytes: number): AsyncGenerator<Uint8Array> {
  const tooLarge = () => new HttpProblem('body-too-large', `The body must not exceed ${maxBytes} bytes`);
  if (Number(request.headers.get('Content-Length') ?? 0) > maxBytes) throw tooLarge();
  let bytes = 0;
  try {
    for await (const chunk of request.body ?? []) {
      bytes += chunk.length;
      if (bytes > maxBytes) throw tooLarge();
      yield chunk;
    }
  } catch (error) {
    // The sender may be gone: not a failure of the service, even if the platform throws.
    throw error instanceof HttpProblem
      ? error
      : new HttpProblem('malformed-request', 'The body broke off before its end');
  }
}
