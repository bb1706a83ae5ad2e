import { parseArgs } from 'node:util';
import { type Command, type Option, type Options, UsageError } from './command.ts';
import { didYouMean } from './did-you-mean.ts';

/** Options of every command. */
const COMMON = {
  json: { type: 'boolean', help: 'print the outcome as JSON on standard output' },
  progress: { type: 'boolean', help: 'print progress even if standard error is not a terminal' },
  help: { type: 'boolean', help: 'print this text' },
} as const satisfies Options;

interface Read {
  positionals: string[];
  values: Record<string, string | boolean>;
}

/**
 * Parses the arguments of a command.
 *
 * @throws UsageError naming an unknown option and the nearest known one
 */
export function readCommandLine({ options }: Command, args: readonly string[]): Read {
  const known: Options = { ...options, ...COMMON };
  const aliases = aliasesIn(known);
  const { tokens } = parseArgs({ args: [...args], options: typesOf(known), strict: false, tokens: true });
  const read: Read = { positionals: [], values: {} };
  for (const token of tokens) {
    if (token.kind === 'positional') read.positionals.push(token.value);
    if (token.kind === 'option') {
      const name = aliases.get(token.name) ?? token.name;
      read.values[name] = given({ ...token, name }, known);
    }
  }
  return read;
}

interface OptionToken {
  name: string;
  rawName: string;
  value?: string | undefined;
}

function given({ name, rawName, value }: OptionToken, known: Options): string | boolean {
  const option = Object.hasOwn(known, name) ? known[name] : undefined;
  if (!option) {
    throw new UsageError(`Unknown option ${rawName}${didYouMean(name, Object.keys(known), '--')}`);
  }
  if (option.type === 'boolean') {
    if (value === undefined) return true;
    throw new UsageError(`${rawName} takes no value, but has ${value}`);
  }
  // The next argument may be an option, and the value forgotten.
  if (value === undefined || value.startsWith('--')) throw new UsageError(`${rawName} needs a value: ${option.value}`);
  return value;
}

const typesOf = (options: Options) =>
  Object.fromEntries(
    Object.entries(options).flatMap(([name, { type, alias }]) =>
      [name, alias ?? []].flat().map((spelling) => [spelling, { type }] as const),
    ),
  );

const aliasesIn = (options: Options): ReadonlyMap<string, string> =>
  new Map(
    Object.entries(options).flatMap(([name, { alias }]) => (alias === undefined ? [] : [[alias, name] as const])),
  );

/** Lines of the help of a command: usage, options, exit codes. */
export function helpOf(name: string, { forms, options, exits }: Command): string[] {
  const shown = Object.entries<Option>({ ...options, ...COMMON }).map(([option, { value, help }]) => {
    return `  ${`--${option}${value === undefined ? '' : ` ${value}`}`.padEnd(26)} ${help}`;
  });
  const usage = forms.map((form, index) => `${index === 0 ? 'Usage:' : '      '} slipmark ${name} ${form}`.trimEnd());
  const codes = Object.entries(exits).map(([code, meaning]) => `  ${code}  ${meaning}`);
  return [...usage, '', 'Options', ...shown, '', 'Exit codes', ...codes];
}
