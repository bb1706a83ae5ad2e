import * as pipeline from './core/core.ts';
import { sweepHandedIn } from './edge/archive/sweep.ts';
import type { Bindings } from './edge/env.ts';
import { createApp } from './edge/http/app.ts';
import { cloudWorld } from './edge/world.ts';

export { Ledger } from './edge/archive/ledger/ledger.ts';
export { Workshop } from './edge/archive/workshop/workshop.ts';

/** The Worker. The bindings are the same for every request, so the service is built once for each set of them. */
const apps = new WeakMap<Bindings, ReturnType<typeof createApp>>();

function appFor(env: Bindings): ReturnType<typeof createApp> {
  const app = apps.get(env) ?? createApp({ world: cloudWorld(env), pipeline });
  apps.set(env, app);
  return app;
}

export default {
  fetch: (request, env, context) => appFor(env).fetch(request, env, context),
  async scheduled({ scheduledTime }, env) {
    await sweepHandedIn(env.BLOBS, new Date(scheduledTime));
  },
} satisfies ExportedHandler<Bindings>;
