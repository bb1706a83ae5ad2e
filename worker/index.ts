import { sweepHandedIn } from './archive/sweep.ts';
import type { Bindings } from './env.ts';
import { createApp } from './http/app.ts';
import * as pipeline from './pipeline.ts';
import { cloudWorld } from './world.ts';

export { Ledger } from './archive/ledger/ledger.ts';
export { Workshop } from './archive/workshop/workshop.ts';

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
