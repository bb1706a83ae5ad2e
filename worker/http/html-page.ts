import { render, type View } from '../pack/render.ts';
import type { Lexicon } from '../words/lexicon.ts';
import { pagePolicy } from './page-policy.ts';

interface PageOptions {
  /** @default 200 */
  status?: number;
  /** @default false */
  hasScript?: boolean;
  /** @default English */
  lexicon?: Lexicon;
}

/** A page that is for one reader only, and never kept. */
export function htmlPage(
  template: string,
  view: View,
  { status = 200, hasScript = false, lexicon }: PageOptions = {},
): Response {
  const headers = {
    'Content-Type': 'text/html; charset=utf-8',
    'Cache-Control': 'private, no-store',
    'Content-Security-Policy': pagePolicy(hasScript),
    'X-Robots-Tag': 'noindex',
  };
  return new Response(render(template, view, lexicon), { status, headers });
}
