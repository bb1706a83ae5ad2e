import type { Operations } from './generated/api.ts';

/** `If-Match` as `ifMatch`. */
type Joined<Name> = Name extends `${infer First}-${infer Rest}` ? `${First}${Joined<Rest>}` : Name;
type FieldOf<Header> = Uncapitalize<Joined<Header> & string>;

/** Values of one object type, spelled out, so that an editor shows the fields. */
type Spelled<Type> = { [Field in keyof Type]: Type[Field] };

type Params<Of> = Of extends { params: infer Params } ? Params : unknown;
type Query<Of> = Of extends { query: infer Query } ? { [Name in keyof Query]?: string | number | undefined } : unknown;
type Headers<Of> = Of extends { headers: infer Given }
  ? { [Name in keyof Given as FieldOf<Name>]?: string | undefined }
  : unknown;
type Sent<Content> = Content extends Uint8Array ? Uint8Array | Blob : Content;
type Body<Of> = Of extends { body: infer Content } ? { body: Sent<Content[keyof Content]> } : unknown;

/** Successful responses, by media type. */
type Good<Of> = Of extends { answers: infer Answers } ? Answers[keyof Answers & (200 | 201 | 202 | 204)] : never;
type MediaType<Of> = Good<Of> extends infer Content ? (Content extends object ? keyof Content : never) : never;
type Given<Of, Type> =
  Good<Of> extends infer Content ? (Content extends object ? Content[keyof Content & Type] : undefined) : never;

/** Type of a response body: bytes if all of its forms are files. */
type Forms<Of> = Given<Of, MediaType<Of>>;
type IsOneForm<Of> = [Forms<Of>] extends [Uint8Array]
  ? true
  : string extends Forms<Of>
    ? [Forms<Of>] extends [string]
      ? true
      : false
    : true;

/** Parameters of a call: path parameters, query, headers and body side by side, under their own names. */
export type Asked<Of> = Spelled<Params<Of> & Query<Of> & Headers<Of> & Body<Of>>;

export interface Answer<Given> {
  status: number;
  body: Given;
  /** Body as received. */
  bytes: Uint8Array<ArrayBuffer>;
  /** Tag to send as `ifMatch` with a change based on this response. */
  etag: string | undefined;
  /** Cursor of the next page of a list. */
  next: string | undefined;
}

export interface CallOptions {
  signal?: AbortSignal;
}

/** Type of a call. The parameters are optional if none is required; `accept` chooses among several media types. */
export type Call<Of> =
  IsOneForm<Of> extends false
    ? <Type extends MediaType<Of>>(
        asked: Asked<Of> & { accept: Type },
        options?: CallOptions,
      ) => Promise<Answer<Given<Of, Type>>>
    : Record<never, never> extends Asked<Of>
      ? (asked?: Asked<Of>, options?: CallOptions) => Promise<Answer<Forms<Of>>>
      : (asked: Asked<Of>, options?: CallOptions) => Promise<Answer<Forms<Of>>>;

/** All calls of the API. */
export type Slipmark = { readonly [Name in keyof Operations]: Call<Operations[Name]> };
