import { parseArgs } from 'node:util';
import { nearest } from '../../core/record/nearest.ts';
import { type Command, type Option, type Options, UsageError } from './command.ts';

/** Options of every command. */
const COMMON = {
  json: { type: 'boolean', help: 'the outcome as JSON on standard output' },
  progress: { type: 'boolean', help: 'say what goes on, also where standard error is no terminal' },
  help: { type: 'boolean', help: 'this text' },
} as const satisfies Options;

interface Read {
  positionals: string[];
  values: Record<string, string | boolean>;
}

/**
 * Reads what follows the name of a command.
 *
 * @throws UsageError naming the option that is not known, and the one that may be meant
 */
export function readCommandLine({ options }: Command, args: readonly string[]): Read {
  const known: Options = { ...options, ...COMMON };
  const { tokens } = parseArgs({ args: [...args], options: typesOf(known), strict: false, tokens: true });
  const read: Read = { positionals: [], values: {} };
  for (const token of tokens) {
    if (token.kind === 'positional') read.positionals.push(token.value);
    if (token.kind === 'option') read.values[token.name] = given(token, known);
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
    const near = nearest(name, Object.keys(known));
    throw new UsageError(`There is no option ${rawName}${near === undefined ? '' : `: --${near} may be meant`}`);
  }
  if (option.type === 'boolean') {
    if (value === undefined) return true;
    throw new UsageError(`${rawName} takes no value: ${value} was given`);
  }
  // What follows may be an option that was meant as one.
  if (value === undefined || value.startsWith('--')) throw new UsageError(`${rawName} takes a value, ${option.value}`);
  return value;
}

const typesOf = (options: Options) =>
  Object.fromEntries(Object.entries(options).map(([name, { type }]) => [name, { type }] as const));

/** How a command is called, and what it answers, line by line. */
export function helpOf(name: string, { forms, options, exits }: Command): string[] {
  const shown = Object.entries<Option>({ ...options, ...COMMON }).map(([option, { value, help }]) => {
    return `  ${`--${option}${value === undefined ? '' : ` ${value}`}`.padEnd(26)} ${help}`;
  });
  const usage = forms.map((form, index) => `${index === 0 ? 'Usage:' : '      '} slipmark ${name} ${form}`.trimEnd());
  const codes = Object.entries(exits).map(([code, meaning]) => `  ${code}  ${meaning}`);
  return [...usage, '', 'Options', ...shown, '', 'Answers with', ...codes];
}
