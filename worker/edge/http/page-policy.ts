/**
 * Returns the content security policy of a page behind a link: its own stylesheet, pictures and fonts, and its script
 * if it calculates.
 */
export const pagePolicy = (hasScript: boolean): string =>
  `default-src 'none'; ${hasScript ? "script-src 'self'; connect-src 'self'; worker-src 'self'; " : ''}style-src 'self'; img-src 'self' data:; font-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'`;
