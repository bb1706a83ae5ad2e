// Stands in for `cloudflare:workers` where the service runs in Node.
export class DurableObject<Env> {
  protected readonly ctx: unknown;
  protected readonly env: Env;

  constructor(ctx: unknown, env: Env) {
    this.ctx = ctx;
    this.env = env;
  }
}
