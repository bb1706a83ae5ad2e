import { unlinkSync } from 'node:fs';
import { connect, createServer } from 'node:net';
import { join } from 'node:path';

/**
 * Takes a storage folder for this process until it ends. The lock is a socket that the process listens on, so that one left
 * behind by a process that died is told from one that is held.
 *
 * @returns whether it was free
 */
export async function takeLock(storage: string): Promise<boolean> {
  const socket = join(storage, 'lock');
  if (await listen(socket)) return true;
  if (await isHeld(socket)) return false;
  unlinkSync(socket);
  return listen(socket);
}

function listen(socket: string): Promise<boolean> {
  return new Promise((resolve) => {
    const server = createServer((visitor) => visitor.destroy());
    server.once('error', () => resolve(false));
    server.listen(socket, () => resolve(true));
    server.unref();
  });
}

function isHeld(socket: string): Promise<boolean> {
  return new Promise((resolve) => {
    const visitor = connect(socket);
    visitor.once('connect', () => {
      visitor.destroy();
      resolve(true);
    });
    visitor.once('error', () => resolve(false));
  });
}
