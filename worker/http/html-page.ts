import { render, type View } from '../pack/render.ts';

/** What a page may load: its own stylesheet and nothing else. No page needs a script. */
const CONTENT_SECURITY_POLICY =
  "default-src 'none'; style-src 'self'; img-src 'self' data:; font-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

/** A page that is for one reader only, and never kept. */
export function htmlPage(template: string, view: View, status = 200): Response {
  const headers = {
    'Content-Type': 'text/html; charset=utf-8',
    'Cache-Control': 'private, no-store',
    'Content-Security-Policy': CONTENT_SECURITY_POLICY,
    'X-Robots-Tag': 'noindex',
  };
  return new Response(render(template, view), { status, headers });
}
