import { SlipmarkProblem } from '../../client/client.ts';
import { DefectsError } from '../backup/defect.ts';
import { type Command, NOT_REACHED, UsageError } from './command.ts';
import { helpOf, readCommandLine } from './command-line.ts';
import { didYouMean } from './did-you-mean.ts';
import { type Output, outputFor } from './output.ts';

interface Listed {
  /** Begins with a verb, up to 60 characters. */
  summary: string;
  /** Older name, which still works. */
  alias?: string;
  load(): Promise<Command>;
}

/** Every command by name; only the code of the called one is loaded. */
const COMMANDS: Readonly<Record<string, Listed>> = {
  example: {
    summary: 'Write a sample record',
    load: async () => (await import('./example.ts')).example,
  },
  assess: {
    summary: 'Check a record on this machine',
    load: async () => (await import('./assess.ts')).assess,
  },
  pack: {
    summary: 'Write an unsealed pack on this machine',
    load: async () => (await import('./pack.ts')).pack,
  },
  post: {
    summary: 'Send a record and its files; release it on request',
    load: async () => (await import('./post.ts')).post,
  },
  begin: {
    summary: 'Begin a record from the sealed pack of another workshop',
    load: async () => (await import('./begin.ts')).begin,
  },
  verify: {
    summary: 'Verify a pack or an exported folder, offline',
    load: async () => (await import('./verify.ts')).verify,
  },
  export: {
    summary: 'Export the archive of a workshop as a folder',
    load: async () => (await import('./export.ts')).exportArchive,
  },
  import: {
    summary: 'Import an exported folder, or repair an archive from it',
    load: async () => (await import('./import.ts')).importArchive,
  },
  scrub: {
    summary: 'Check all stored data for damage',
    load: async () => (await import('./scrub.ts')).scrub,
  },
  reindex: {
    summary: 'Rebuild the list of packs',
    alias: 'relist',
    load: async () => (await import('./reindex.ts')).reindex,
  },
  csv: {
    summary: 'Convert lists of a record to tables and back',
    load: async () => (await import('./csv.ts')).csv,
  },
  keys: {
    summary: 'List, make, rotate and revoke keys of a workshop',
    load: async () => (await import('./keys.ts')).keys,
  },
};

const NOT_UNDERSTOOD = 2;

/** Output of help, which is for people even with `--json`. */
const speaking = outputFor({ isJson: false, hasProgress: false });

/** Runs a command line and gives the exit code of the process. */
export async function run([typed = '', ...args]: readonly string[]): Promise<number> {
  const name = currentName(typed);
  const listed = Object.hasOwn(COMMANDS, name) ? COMMANDS[name] : undefined;
  if (!listed) return overview(name);
  if (name !== typed) speaking.complain(`slipmark ${typed} is now slipmark ${name}; the old name still works.`);
  const command = await listed.load();
  const help = () => [listed.summary, '', ...helpOf(name, command)];
  const output = outputFor({ isJson: args.includes('--json'), hasProgress: args.includes('--progress') });
  try {
    const { positionals, values } = readCommandLine(command, args);
    if (!values.help) return await command.run(positionals, values as never, output);
    speaking.say(...help());
    return 0;
  } catch (error) {
    if (!(error instanceof UsageError)) return failed(command, error, output);
    output.complain(error.message, '', ...help());
    output.result({ error: { message: error.message } });
    return command.failures.notUnderstood;
  }
}

/** Current name of a command that was called by an older one. */
function currentName(typed: string): string {
  const [name] = Object.entries(COMMANDS).find(([, { alias }]) => alias === typed) ?? [];
  return name ?? typed;
}

function overview(name: string): number {
  const isAsked = ['', '--help', 'help'].includes(name);
  const lines = Object.entries(COMMANDS).map(([known, { summary }]) => `  ${known.padEnd(8)} ${summary}`);
  const text = [
    'Usage: slipmark COMMAND …',
    '       slipmark COMMAND --help shows its options and exit codes',
    '',
    ...lines,
  ];
  if (isAsked) speaking.say(...text);
  else speaking.complain(`Unknown command ${name}${didYouMean(name, Object.keys(COMMANDS))}`, '', ...text);
  return isAsked && name !== '' ? 0 : NOT_UNDERSTOOD;
}

/** Prints an error and returns its exit code. */
function failed({ failures }: Command, error: unknown, output: Output): number {
  const message = error instanceof Error ? error.message : String(error);
  output.complain(...(error instanceof SlipmarkProblem || error instanceof DefectsError ? error.lines : [message]));
  if (!(error instanceof SlipmarkProblem)) {
    output.result({ error: { message } });
    return failures.failed;
  }
  const { status, type, title, detail, findings } = error;
  output.result({ error: { message, status, type, title, detail, findings } });
  return status === 0 ? NOT_REACHED : failures.failed;
}
