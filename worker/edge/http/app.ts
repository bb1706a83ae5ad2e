import { type Context, Hono } from 'hono';
import { methodNotAllowed } from 'hono/method-not-allowed';
import type { World } from '../world.ts';
import { admit } from './access.ts';
import { ArchiveDamaged, ArchiveUnavailable } from './answer.ts';
import { htmlPage } from './html-page.ts';
import { localeOfReader } from './locale-of-reader.ts';
import { HttpProblem, problemResponse } from './problem.ts';
import { PROBLEM_KINDS } from './problem-kinds.ts';
import { rateHeaders } from './rate-limit.ts';
import type { Call, Caller, Dependencies, Route } from './route.ts';
import { ROUTES } from './routes.ts';
import { securityHeaders } from './security-headers.ts';

/** Creates the service: the routes bound to their dependencies. */
export function createApp(dependencies: Dependencies): Hono {
  const app = new Hono();
  app.use(securityHeaders, methodNotAllowed({ app, onMethodNotAllowed: refusedMethod }));
  for (const route of ROUTES) {
    const [method, path] = route;
    app.on(method, path.replaceAll(/\{(\w+)\}/g, ':$1'), (context) => handled(context, route, dependencies));
  }
  app.notFound(({ req }) => nothingFor(req.raw, req.path));
  app.onError((error) => failed(error, 'none', dependencies.world));
  return app;
}

/** Runs a handler; errors become responses here. */
async function handled(context: Context, route: Route, dependencies: Dependencies): Promise<Response> {
  const [, path, access, operation] = route;
  const request = context.req.raw;
  try {
    const later = laterOf(context, dependencies.world);
    const caller = await admit(request, access, { ...dependencies, later });
    const params = context.req.param() as Record<string, string>;
    const call = { ...dependencies, request, url: new URL(request.url), params, caller, later };
    return withRate(await operation.handle(call), caller);
  } catch (error) {
    return toReader(request, path, failed(error, path, dependencies.world));
  }
}

/**
 * Returns the function for work that the platform waits for. Without a platform, as in tests, the work is also done.
 */
function laterOf(context: Context, { log }: World): Call['later'] {
  return (task) => {
    const done = task().catch((error: unknown) => log({ code: 'UNEXPECTED_FAILURE', route: 'later', ...told(error) }));
    try {
      context.executionCtx.waitUntil(done);
    } catch {
      // There is no execution context: the task continues without one.
    }
  };
}

/** Adds to the response for a key the number of requests that it has left. */
function withRate(response: Response, { rate }: Caller): Response {
  for (const [name, value] of Object.entries(rate ? rateHeaders(rate) : {})) response.headers.set(name, value);
  return response;
}

/**
 * Turns an error into a response. The log gets the pattern of the route, never the address: an address may contain a
 * token.
 */
function failed(error: unknown, route: string, { log }: World): Response {
  if (error instanceof ArchiveUnavailable) log({ code: 'ARCHIVE_UNAVAILABLE', cause: error.reason });
  if (error instanceof ArchiveDamaged) log({ code: 'FILE_DAMAGED', file: error.file });
  if (error instanceof HttpProblem) return problemResponse(error);
  log({ code: 'UNEXPECTED_FAILURE', route, ...told(error) });
  return problemResponse(
    new HttpProblem('internal', 'The failure was noted; the request changed nothing that it does not say'),
  );
}

const told = (error: unknown): { name: string; message: string } =>
  error instanceof Error ? { name: error.name, message: error.message } : { name: 'unknown', message: String(error) };

/** Turns a problem behind a link into a page for its reader; a program gets the problem as data. */
function toReader(request: Request, path: string, response: Response): Response {
  const isReader = path.startsWith('/p/') && request.headers.get('Accept')?.includes('text/html');
  if (!isReader || response.status < 500) return response;
  const { status } = response;
  const view = { isDamaged: status !== PROBLEM_KINDS.unavailable.status };
  return htmlPage('trouble-page', view, { status, locale: localeOfReader(request) });
}

/** Response for an unknown address: a page with links for a browser, the problem as data for a program. */
function nothingFor({ headers }: Request, path: string): Response {
  const isReader = headers.get('Accept')?.includes('text/html') && !path.startsWith('/v1/');
  if (isReader) return htmlPage('nothing-page', {}, { status: 404 });
  return problemResponse(new HttpProblem('not-found', 'No such address; /v1/openapi.json lists them all'));
}

/** Response for a known address with another method. */
function refusedMethod(context: Context, methods: readonly string[]): Response {
  // Hono would keep the headers of the response that this one replaces.
  context.res = undefined;
  const allowed = methods.join(', ');
  const detail = `${context.req.method} must be one of ${allowed}`;
  return problemResponse(new HttpProblem('method-not-allowed', detail, { headers: { Allow: allowed } }));
}
