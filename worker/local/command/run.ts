import { SlipmarkProblem } from '../../client/client.ts';
import { nearest } from '../../core/record/nearest.ts';
import { DefectsError } from '../backup/defect.ts';
import { type Command, NOT_REACHED, UsageError } from './command.ts';
import { helpOf, readCommandLine } from './command-line.ts';
import { type Output, outputFor } from './output.ts';

interface Listed {
  summary: string;
  load(): Promise<Command>;
}

/** Every command by its name; only the code of the one that is called is read. */
const COMMANDS: Readonly<Record<string, Listed>> = {
  example: {
    summary: 'An invented record to begin from, as if its work had ended yesterday',
    load: async () => (await import('./example.ts')).example,
  },
  assess: {
    summary: 'Compute and check a record here, without a service',
    load: async () => (await import('./assess.ts')).assess,
  },
  pack: {
    summary: 'Write a draft of the pack of a record here, without a service: nothing in it is released',
    load: async () => (await import('./pack.ts')).pack,
  },
  post: {
    summary:
      'Keep a record in the service, hand in its files, say what stands against the release; release it where asked to',
    load: async () => (await import('./post.ts')).post,
  },
  verify: {
    summary: 'Whether a pack, or an exported folder, is what its workshop sealed; asks nobody',
    load: async () => (await import('./verify.ts')).verify,
  },
  export: {
    summary: 'The archive of a workshop as a folder that is read and proved without a service',
    load: async () => (await import('./export.ts')).exportArchive,
  },
  import: {
    summary: 'Such a folder into an empty workshop, or what is damaged back from it',
    load: async () => (await import('./import.ts')).importArchive,
  },
  scrub: {
    summary: 'Whether everything that the service stores is as it was kept',
    load: async () => (await import('./scrub.ts')).scrub,
  },
  relist: {
    summary: 'Put every pack into the list of packs again, after its database was lost',
    load: async () => (await import('./relist.ts')).relist,
  },
  csv: {
    summary: 'Equipment list, scales, weighing points and worksheet as tables, out of a record and into it',
    load: async () => (await import('./csv.ts')).csv,
  },
  keys: {
    summary: 'The keys of a workshop',
    load: async () => (await import('./keys.ts')).keys,
  },
};

const NOT_UNDERSTOOD = 2;

/** For help, which is said to people whatever else is asked for. */
const speaking = outputFor({ isJson: false, hasProgress: false });

/** Runs a command line and gives the exit code of the process. */
export async function run([name = '', ...args]: readonly string[]): Promise<number> {
  const listed = Object.hasOwn(COMMANDS, name) ? COMMANDS[name] : undefined;
  if (!listed) return overview(name);
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

function overview(name: string): number {
  const isAsked = ['', '--help', 'help'].includes(name);
  const near = isAsked ? undefined : nearest(name, Object.keys(COMMANDS));
  const lines = Object.entries(COMMANDS).map(([known, { summary }]) => `  ${known.padEnd(8)} ${summary}`);
  const text = ['Usage: slipmark COMMAND …; slipmark COMMAND --help says more', '', ...lines];
  if (isAsked) speaking.say(...text);
  else
    speaking.complain(`There is no command ${name}${near === undefined ? '' : `: ${near} may be meant`}`, '', ...text);
  return isAsked && name !== '' ? 0 : NOT_UNDERSTOOD;
}

/** Says what went wrong on the way, and gives the code for it. */
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
