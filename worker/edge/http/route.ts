import type * as z from 'zod';
import type * as pipeline from '../../core/core.ts';
import type { KeyScope, Rate } from '../archive/workshop/workshop-calls.ts';
import type { World } from '../world.ts';
import type { ProblemKind } from './problem-kinds.ts';

/** The pure stages as the edge uses them. */
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
  | 'flownUntil'
  | 'inspectAttachment'
  | 'isOfWeighingAlone'
  | 'isOwnMarkup'
  | 'nextDue'
  | 'openAfterPack'
  | 'openDigest'
  | 'picturesShown'
  | 'seal'
  | 'tighterText'
  | 'timeLeft'
>;

export interface Dependencies {
  world: World;
  pipeline: Pipeline;
}

/** Who calls, once the key has been checked. */
export interface Caller {
  workshop: string;
  key: string;
  /** The person in whose hand the key is, where it is a person's. */
  person: string | null;
  /** What the key has left of its share; undefined where none is counted. */
  rate: Rate | undefined;
  /** Text of the key: only for deriving what the caller alone may derive again. Never kept or logged. */
  secret: string;
}

/** One request on its way through a handler. */
export interface Call extends Dependencies {
  request: Request;
  url: URL;
  /** Path parameters as they stand in the address, decoded. */
  params: Readonly<Record<string, string>>;
  /** The caller of a route that asks for a key. */
  caller: Caller;
  /** Does something once the answer is on its way; whatever becomes of it changes nothing of the answer. */
  later(task: () => Promise<void>): void;
}

/** Who may call: anybody, holders of the deployment's secret, or keys with a scope. */
export type Access = 'public' | 'deployment' | KeyScope;

interface Body {
  type: string;
  description: string;
  schema: z.ZodType | 'VisitRecord' | 'binary';
}

interface Answer {
  description: string;
  /** By media type; empty for an answer without a body. */
  content?: Readonly<Record<string, z.ZodType | 'VisitRecord' | 'binary' | 'text'>>;
  headers?: readonly string[];
}

/** What a call does, for people and for the interface description, with the function that does it. */
export interface Operation {
  /** Name of the call in the description and in every client made from it: stable for ever, unique. */
  id: string;
  summary: string;
  description?: string;
  /** For a POST: asked again it does nothing more, so that whoever lost the answer may ask again. */
  isRepeatable?: true;
  query?: Readonly<Record<string, string>>;
  headers?: Readonly<Record<string, string>>;
  body?: Body;
  answers: Readonly<Record<number, Answer>>;
  /** Problems beyond those that every call can meet. */
  problems?: readonly ProblemKind[];
  handle(call: Call): Promise<Response> | Response;
}

export type Method = 'GET' | 'PUT' | 'PATCH' | 'POST' | 'DELETE';
export type Route = readonly [method: Method, path: string, access: Access, operation: Operation];
