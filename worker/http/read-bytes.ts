import { Refusal } from './problem.ts';

/**
 * The body of a request as bytes, counted while reading, because a body sent in chunks does not announce its length.
 *
 * @throws Refusal 413
 */
export async function readBytes(request: Request, mostBytes: number): Promise<Uint8Array> {
  const tooLarge = () => new Refusal('body-too-large', `The body must be at most ${mostBytes} bytes`);
  if (Number(request.headers.get('Content-Length') ?? 0) > mostBytes) throw tooLarge();
  const chunks: Uint8Array[] = [];
  let size = 0;
  for await (const chunk of request.body ?? []) {
    size += chunk.length;
    if (size > mostBytes) throw tooLarge();
    chunks.push(chunk);
  }
  const bytes = new Uint8Array(size);
  let at = 0;
  for (const chunk of chunks) {
    bytes.set(chunk, at);
    at += chunk.length;
  }
  return bytes;
}
