import { CALLS } from './generated/api.ts';
import { type KnownCall, type Service, send, type Values } from './send.ts';
import type { Answer, CallOptions, Slipmark } from './types.ts';

export type * from './generated/api.ts';
export { ifThere, refusalOf, SlipmarkProblem } from './problem.ts';
export type { Service } from './send.ts';
export type { Answer, CallOptions, Slipmark } from './types.ts';

/**
 * Creates a client of the service, with one function for every call of its API description, named by its `operationId`.
 * Requires only `fetch`. A call returns its response, or throws a `SlipmarkProblem`.
 */
export function slipmark(service: Service = {}): Slipmark {
  const calls = Object.entries<KnownCall>(CALLS).map(([name, call]) => {
    return [name, (asked: Values = {}, options: CallOptions = {}) => send(service, call, asked, options)] as const;
  });
  return Object.fromEntries(calls) as unknown as Slipmark;
}

/** Call that returns a list, page by page. */
type ListCall = (asked: never, options?: CallOptions) => Promise<Answer<{ items: unknown[] }>>;
type ItemOf<List extends ListCall> = Awaited<ReturnType<List>>['body']['items'][number];

/** Yields every item of a list, page after page: `for await (const pack of everyItem(client.listPacks, {}))`. */
export async function* everyItem<List extends ListCall>(
  list: List,
  asked: NonNullable<Parameters<List>[0]>,
  options: CallOptions = {},
): AsyncGenerator<ItemOf<List>, void, undefined> {
  for (let { after } = asked as { after?: string | undefined }; ; ) {
    const { body, next } = await list({ ...(asked as object), after } as never, options);
    yield* body.items as ItemOf<List>[];
    if (next === undefined) return;
    after = next;
  }
}

/** Returns every item of a list at once. */
export async function allItems<List extends ListCall>(
  list: List,
  asked: NonNullable<Parameters<List>[0]>,
  options: CallOptions = {},
): Promise<ItemOf<List>[]> {
  const items: ItemOf<List>[] = [];
  for await (const item of everyItem(list, asked, options)) items.push(item);
  return items;
}
