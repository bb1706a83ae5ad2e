import type { Output } from './output.ts';

/** Option of a command. */
export interface Option {
  type: 'string' | 'boolean';
  /** Placeholder of its value in the help, such as `DIR`. */
  value?: string;
  /** Older name, which still works. */
  alias?: string;
  help: string;
}

export type Options = Readonly<Record<string, Option>>;

export type Values<Given extends Options> = {
  readonly [Name in keyof Given]?: Given[Name]['type'] extends 'boolean' ? boolean : string;
};

/** Exit codes of errors that the command itself does not handle. */
export interface Failures {
  /** The command line, or a file that it names, is not readable. */
  notUnderstood: number;
  /** Any other error. */
  failed: number;
}

export interface Command<Given extends Options = Options> {
  /** Arguments behind the name, one line for each form. */
  forms: readonly string[];
  options: Given;
  /** Exit codes with their meaning, for the help. */
  exits: Readonly<Record<number, string>>;
  failures: Failures;
  run(positionals: readonly string[], values: Values<Given>, output: Output): Promise<number>;
}

/** Defines a command; the types of its options stay within its own code. */
export const command = <const Given extends Options>(given: Command<Given>): Command => given as unknown as Command;

/** Command line that cannot be parsed; the help follows it. */
export class UsageError extends Error {}

/** File or folder that cannot be read or written. */
export class FileError extends Error {}

/** The service could not be reached. */
export const NOT_REACHED = 3;
