/** Every form of a seal ever issued. */
const SEAL_FORMATS = ['slipmark-seal/1', 'slipmark-seal/2'] as const;

/** Current form of seals. */
export const SEAL_FORMAT = 'slipmark-seal/2';

/** A PDF that a seal covers: its name, and the digest and the length of the file with an empty slot. */
export interface SealedPdf {
  name: string;
  sha256: string;
  bytes: number;
}

/** Name of the file of the whole pack. */
export const WHOLE_PACK = 'pack.pdf';

/** Content that a workshop signs in a seal, in every form. Unknown members are ignored. */
export interface SealClaims {
  format: (typeof SEAL_FORMATS)[number];
  workshop: string;
  registration: string;
  pack: string;
  issue: number;
  issuedAt: string;
  manifestSha256: string;
  recordSha256: string;
  /** Every PDF of the pack, the whole pack first. Form 1 has `pdf` instead, only the whole pack. */
  files: SealedPdf[];
  /**
   * Parts that locate a change of the whole pack: name, first byte, the byte after the last, and the start of a digest.
   * The digest of the file is the proof.
   */
  parts: [name: string, start: number, end: number, digest: string][];
}

/** Claims in form 1. */
type FirstClaims = Omit<SealClaims, 'files'> & { pdf: Omit<SealedPdf, 'name'> };

/**
 * Returns the claims in a seal of any form; undefined if the form is unknown, or if the claims do not match it: the
 * owner of a key can sign anything.
 */
export function claimsIn(payload: unknown): SealClaims | undefined {
  if (!isOfForm(payload)) return undefined;
  const claims = payload as SealClaims | FirstClaims;
  if (!('pdf' in claims)) return claims;
  const { pdf, ...rest } = claims;
  return { ...rest, files: [{ name: WHOLE_PACK, ...pdf }] };
}

const TEXTS = ['workshop', 'registration', 'pack', 'issuedAt', 'manifestSha256', 'recordSha256'] as const;

function isOfForm(payload: unknown): boolean {
  if (!isObject(payload)) return false;
  const { format, issue, parts, pdf, files } = payload;
  const hasFacts = TEXTS.every((name) => typeof payload[name] === 'string') && typeof issue === 'number';
  const sealed = 'pdf' in payload ? [pdf] : files;
  const hasFiles = Array.isArray(sealed) && sealed.length > 0 && sealed.every(isSealedPdf);
  const isKnown = SEAL_FORMATS.some((known) => known === format);
  return isKnown && hasFacts && hasFiles && Array.isArray(parts) && parts.every(isPart);
}

const isSealedPdf = (value: unknown): boolean =>
  isObject(value) && typeof value.sha256 === 'string' && Number.isSafeInteger(value.bytes);

function isPart(value: unknown): boolean {
  if (!Array.isArray(value)) return false;
  const [name, start, end, digest] = value as unknown[];
  const isStretch = [start, end].every((at) => Number.isSafeInteger(at) && Number(at) >= 0);
  return typeof name === 'string' && isStretch && typeof digest === 'string';
}

const isObject = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;
