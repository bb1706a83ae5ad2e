/** What a page behind a link may load: its own stylesheet, pictures and fonts, and where it works something out its own script. */
export const pagePolicy = (hasScript: boolean): string =>
  `default-src 'none'; ${hasScript ? "script-src 'self'; connect-src 'self'; worker-src 'self'; " : ''}style-src 'self'; img-src 'self' data:; font-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'`;
