import type * as z from 'zod';
import type * as pipeline from '../../core/core.ts';
import type { KeyScope, Rate } from '../archive/workshop/workshop-calls.ts';
import type { World } from '../world.ts';
import type { ProblemKind } from './problem-kinds.ts';

/** Pure stages that the edge uses. */
export type Pipeline = Pick<
  typeof pipeline,
  | 'INSPECTION'
  | 'assess'
  | 'assessmentAnswer'
  | 'carriedForward'
  | 'cleanImage'
  | 'draftDocuments'
  | 'draftPdf'
  | 'factsToday'
  | 'firstRecord'
  | 'flownUntil'
  | 'inspectAttachment'
  | 'isOfWeighingAlone'
  | 'isOwnMarkup'
  | 'nextDue'
  | 'nextRecord'
  | 'openAfterPack'
  | 'openDigest'
  | 'picturesShown'
  | 'proofInPack'
  | 'provedFile'
  | 'seal'
  | 'standingAfter'
  | 'tighterText'
  | 'dueItems'
  | 'timeLeft'
>;

export interface Dependencies {
  world: World;
  pipeline: Pipeline;
}

/** Caller, once the key has been checked. */
export interface Caller {
  workshop: string;
  key: string;
  /** Person who holds the key, if it is the key of a person. */
  person: string | null;
  /** Requests that the key has left; undefined if they are not counted. */
  rate: Rate | undefined;
  /** Text of the key: only to derive what nobody but the caller may derive again. Never kept or logged. */
  secret: string;
}

/** Request with its parameters and dependencies. */
export interface Call extends Dependencies {
  request: Request;
  url: URL;
  /** Path parameters as in the address, decoded. */
  params: Readonly<Record<string, string>>;
  /** Caller of a route that requires a key. */
  caller: Caller;
  /** Runs a task after the response was sent; its outcome does not change the response. */
  later(task: () => Promise<void>): void;
}

/** Permission for a route: public, holders of the deployment's secret, or keys with a scope. */
export type Access = 'public' | 'deployment' | KeyScope;

interface Body {
  type: string;
  description: string;
  schema: z.ZodType | 'VisitRecord' | 'binary';
}

interface Answer {
  description: string;
  /** Bodies by media type; empty for a response without a body. */
  content?: Readonly<Record<string, z.ZodType | 'VisitRecord' | 'binary' | 'text'>>;
  headers?: readonly string[];
}

/** Operation of the API: its description, and the function that runs it. */
export interface Operation {
  /** Name of the call in the description and in every client made from it: never changes, unique. */
  id: string;
  summary: string;
  description?: string;
  /** For a POST: a repetition has no further effect, so that a client that lost the response may repeat it. */
  isRepeatable?: true;
  query?: Readonly<Record<string, string>>;
  headers?: Readonly<Record<string, string>>;
  body?: Body;
  answers: Readonly<Record<number, Answer>>;
  /** Problems beyond those that every call can have. */
  problems?: readonly ProblemKind[];
  handle(call: Call): Promise<Response> | Response;
}

export type Method = 'GET' | 'PUT' | 'PATCH' | 'POST' | 'DELETE';
export type Route = readonly [method: Method, path: string, access: Access, operation: Operation];
