import { unlinkSync } from 'node:fs';
import { connect, createServer, type Server } from 'node:net';
import { join } from 'node:path';

/** A storage folder that is held by this process. */
export interface Lock {
  release(): Promise<void>;
}

/** How often a lock is tried for that another start is just taking or leaving. */
const MAX_TRIES = 5;

/**
 * Takes a storage folder for this process until it ends or lets go. The lock is a socket that the process listens on, so that one left
 * behind by a process that died is told from one that is held.
 *
 * @returns undefined where another process holds it
 */
export async function takeLock(storage: string): Promise<Lock | undefined> {
  const socket = join(storage, 'lock');
  for (let tries = 0; tries < MAX_TRIES; tries++) {
    const server = await listen(socket);
    if (server) return { release: () => closed(server) };
    if (await isHeld(socket)) return undefined;
    removeLeftover(socket);
  }
  return undefined;
}

/** Two starts at once may both find the socket of a process that died: the second finds it gone. */
function removeLeftover(socket: string): void {
  try {
    unlinkSync(socket);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error;
  }
}

const closed = (server: Server): Promise<void> => new Promise((resolve) => server.close(() => resolve()));

function listen(socket: string): Promise<Server | undefined> {
  return new Promise((resolve, reject) => {
    const server = createServer((visitor) => visitor.destroy());
    server.once('error', (error: NodeJS.ErrnoException) => {
      if (error.code === 'EADDRINUSE') resolve(undefined);
      else reject(error);
    });
    server.listen(socket, () => resolve(server));
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
