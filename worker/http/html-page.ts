import { render, type View } from '../pack/render.ts';
import type { Lexicon } from '../words/lexicon.ts';

/** What a page may load: its own stylesheet, pictures and fonts, and where it works something out its own script. */
const policyOf = (hasScript: boolean): string =>
  `default-src 'none'; ${hasScript ? "script-src 'self'; connect-src 'self'; worker-src 'self'; " : ''}style-src 'self'; img-src 'self' data:; font-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'`;

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
    'Content-Security-Policy': policyOf(hasScript),
    'X-Robots-Tag': 'noindex',
  };
  return new Response(render(template, view, lexicon), { status, headers });
}
