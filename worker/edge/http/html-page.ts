import { render, type View } from '../../core/pack/render.ts';
import type { Locale } from '../../core/text/locale.ts';
import { pagePolicy } from './page-policy.ts';

interface PageOptions {
  /** @default 200 */
  status?: number;
  /** @default false */
  hasScript?: boolean;
  /** @default English */
  locale?: Locale;
}

/** Returns a page for one reader only, never cached. */
export function htmlPage(
  template: string,
  view: View,
  { status = 200, hasScript = false, locale }: PageOptions = {},
): Response {
  const headers = {
    'Content-Type': 'text/html; charset=utf-8',
    'Cache-Control': 'private, no-store',
    'Content-Security-Policy': pagePolicy(hasScript),
    'X-Robots-Tag': 'noindex',
  };
  return new Response(render(template, view, locale), { status, headers });
}
