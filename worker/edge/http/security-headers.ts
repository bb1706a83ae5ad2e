import { secureHeaders } from 'hono/secure-headers';

/**
 * Policy for PDF files. Some browsers treat their viewer as content of the PDF: a stricter policy would leave the page
 * blank.
 */
export const PDF_POLICY = { 'Content-Security-Policy': "frame-ancestors 'none'" } as const;

/** Headers for responses that pages of other origins may read. */
export const OPEN_TO_ALL = {
  'Access-Control-Allow-Origin': '*',
  'Cross-Origin-Resource-Policy': 'cross-origin',
} as const;

/** Sets the security headers of every response that does not have its own. */
export const securityHeaders = secureHeaders({
  overwrite: false,
  contentSecurityPolicy: { defaultSrc: ["'none'"], frameAncestors: ["'none'"] },
  permissionsPolicy: { camera: [], geolocation: [], microphone: [] },
  strictTransportSecurity: 'max-age=63072000; includeSubDomains',
  xFrameOptions: 'DENY',
  originAgentCluster: false,
  xDnsPrefetchControl: false,
  xDownloadOptions: false,
  xPermittedCrossDomainPolicies: false,
  xXssProtection: false,
});
