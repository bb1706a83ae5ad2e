import type { Key, NewKey, Slipmark } from '../../client/client.ts';
import { command, UsageError } from './command.ts';
import type { Output } from './output.ts';
import { clientFrom, SERVICE_OPTIONS } from './service-options.ts';

/** What the process answers with. */
const EXIT = { done: 0, failed: 1, notUnderstood: 2 } as const;

type NewKeyRequest = Parameters<Slipmark['makeKey']>[0]['body'];

/** Asks, says, and gives what a machine is told. */
type Task = (client: Slipmark, say: (line: string) => void) => Promise<unknown>;

export const keys = command({
  forms: [
    'list                     every key, with its last use',
    'make --label TEXT --scopes records,release [--person ID]',
    'rotate KEY               a new text for a key; the old one opens nothing',
    'revoke KEY',
    'rotate-seal              seal with a new key from now on',
  ],
  options: {
    label: { type: 'string', value: 'TEXT', help: 'where the new key is used' },
    scopes: { type: 'string', value: 'LIST', help: 'what it may do, with commas between' },
    person: { type: 'string', value: 'ID', help: 'in whose hand it is: it releases in that name alone' },
    ...SERVICE_OPTIONS,
  },
  exits: { 0: 'done', 1: 'refused', 2: 'not understood', 3: 'the service cannot be reached' },
  failures: EXIT,
  async run(positionals, values, output: Output) {
    const task = taskOf(positionals, values);
    output.result(await task(clientFrom(values, output), output.say));
    return EXIT.done;
  },
});

interface Wanted {
  label?: string;
  scopes?: string;
  person?: string;
}

function taskOf([name, key, ...rest]: readonly string[], { label, scopes, person }: Wanted): Task {
  const isAlone = key === undefined;
  if (rest.length === 0) {
    if (name === 'list' && isAlone) return list;
    if (name === 'rotate-seal' && isAlone) return rotateSeal;
    if (name === 'make' && isAlone && label !== undefined && scopes !== undefined)
      return make({ label, scopes: scopes.split(',') as NewKeyRequest['scopes'], person });
    if (name === 'rotate' && !isAlone) return async (client, say) => told((await client.rotateKey({ key })).body, say);
    if (name === 'revoke' && !isAlone) return revoke(key);
  }
  throw new UsageError(`What is to be done with the keys is not understood: ${[name, key, ...rest].join(' ').trim()}`);
}

const list: Task = async (client, say) => {
  const { body } = await client.listKeys();
  for (const key of body.items) say(line(key));
  return body;
};

const rotateSeal: Task = async (client, say) => {
  const { body } = await client.rotateSealKey();
  say(`Sealing with ${body.keys[0]?.kid}; ${body.keys.length - 1} older keys stay published`);
  return body;
};

const make =
  (body: NewKeyRequest): Task =>
  async (client, say) =>
    told((await client.makeKey({ body })).body, say);

const revoke =
  (key: string): Task =>
  async (client, say) => {
    await client.revokeKey({ key });
    say('Revoked: it opens nothing any more');
    return { revoked: key };
  };

function told(key: NewKey, say: (line: string) => void): NewKey {
  say(line(key));
  say(`Told this once: ${key.secret}`);
  return key;
}

function line({ key, label, scopes, person, lastUsedAt, revokedAt }: Key): string {
  const state = revokedAt ? `revoked ${revokedAt}` : `last used ${lastUsedAt ?? 'never'}`;
  return `${key}  ${label}  ${scopes.join(',')}${person ? `  in the hand of ${person}` : ''}  ${state}`;
}
