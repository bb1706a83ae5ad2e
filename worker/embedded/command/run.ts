import { SlipmarkProblem } from '../../client/client.ts';
import { nearest } from '../../visit/nearest.ts';
import { assess } from './assess.ts';
import { type Command, NOT_REACHED, UsageError } from './command.ts';
import { helpOf, readCommandLine } from './command-line.ts';
import { csv } from './csv.ts';
import { exportArchive } from './export.ts';
import { importArchive } from './import.ts';
import { keys } from './keys.ts';
import { type Output, outputFor } from './output.ts';
import { pack } from './pack.ts';
import { post } from './post.ts';
import { verify } from './verify.ts';

const COMMANDS: readonly Command[] = [assess, pack, post, verify, exportArchive, importArchive, csv, keys];

const NOT_UNDERSTOOD = 2;

/** Runs a command line and gives the exit code of the process. */
export async function run([name, ...args]: readonly string[]): Promise<number> {
  const command = COMMANDS.find((known) => known.name === name);
  if (!command) return overview(name);
  const output = outputFor({ isJson: args.includes('--json'), hasProgress: args.includes('--progress') });
  try {
    const { positionals, values } = readCommandLine(command, args);
    if (!values.help) return await command.run(positionals, values as never, output);
    console.log(helpOf(command));
    return 0;
  } catch (error) {
    return failed(command, error, output);
  }
}

function overview(name: string | undefined): number {
  const isAsked = name === undefined || name === '--help' || name === 'help';
  const near = isAsked
    ? undefined
    : nearest(
        name,
        COMMANDS.map((known) => known.name),
      );
  const lines = COMMANDS.map((known) => `  ${known.name.padEnd(8)} ${known.summary}`);
  const text = ['Usage: slipmark COMMAND …; slipmark COMMAND --help says more', '', ...lines].join('\n');
  if (isAsked) console.log(text);
  else console.error(`There is no command ${name}${near === undefined ? '' : `: ${near} may be meant`}\n\n${text}`);
  return isAsked && name !== undefined ? 0 : NOT_UNDERSTOOD;
}

/** Says what went wrong, and gives the code for it. */
function failed(command: Command, error: unknown, output: Output): number {
  const message = error instanceof Error ? error.message : String(error);
  const { status, type, title, detail, findings } =
    error instanceof SlipmarkProblem ? error : ({} as Partial<SlipmarkProblem>);
  output.result({ error: { message, ...(status !== undefined && { status, type, title, detail, findings }) } });
  const isUsage = error instanceof UsageError;
  output.complain(isUsage ? `${message}\n\n${helpOf(command)}` : message);
  if (status === 0) return NOT_REACHED;
  return isUsage ? command.failures.notUnderstood : command.failures.failed;
}
