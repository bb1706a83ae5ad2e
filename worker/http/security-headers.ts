/** Viewers of some browsers count as content of the PDF that they show: a stricter policy would leave the page blank. */
export const PDF_POLICY = { 'Content-Security-Policy': "frame-ancestors 'none'" } as const;

/** Set on every answer that does not say otherwise itself. */
const HEADERS = {
  'Content-Security-Policy': "default-src 'none'; frame-ancestors 'none'",
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Permissions-Policy': 'camera=(), geolocation=(), microphone=()',
  'Referrer-Policy': 'no-referrer',
  'Strict-Transport-Security': 'max-age=63072000; includeSubDomains',
  'X-Content-Type-Options': 'nosniff',
  'X-Frame-Options': 'DENY',
} as const;

export function secured(response: Response): Response {
  const open = response.headers.has('Access-Control-Allow-Origin');
  for (const [name, value] of Object.entries(HEADERS))
    if (!response.headers.has(name)) response.headers.set(name, value);
  if (open) response.headers.set('Cross-Origin-Resource-Policy', 'cross-origin');
  return response;
}
