import { Hono } from 'hono';

/** What the framework costs with nothing behind it: what the service is set beside. */
export default new Hono().get('/bare', (context) => context.json({ status: 'ok' }));
