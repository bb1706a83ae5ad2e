import { bodyChunks } from './body-chunks.ts';

/**
 * Reads the body of a request as bytes.
 *
 * @throws HttpProblem 413, and 400 if the client breaks off
 */
export async function readBytes(request: Request, maxBytes: number): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  for await (const chunk of bodyChunks(request, maxBytes)) chunks.push(chunk);
  const bytes = new Uint8Array(chunks.reduce((size, chunk) => size + chunk.length, 0));
  let at = 0;
  for (const chunk of chunks) {
    bytes.set(chunk, at);
    at += chunk.length;
  }
  return bytes;
}
