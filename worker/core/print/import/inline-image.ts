import { LIMITS } from '../../limits.ts';
import { fault } from '../../text/faults.ts';
import type { Budget } from '../bytes/budget.ts';
import { cleanEmbeddedJpeg } from '../picture/jpeg.ts';
import { damaged, RefusedError } from '../refusal.ts';
import { decodeStream, type Filter, fullFilterName } from './decode-stream.ts';
import { isWhite, type Token, tokenAt } from './lexer.ts';
import { nameValue, numberValue, tokenText } from './token-value.ts';

/** An inline image, from after its `BI` to after its `EI`. */
export interface InlineImage {
  end: number;
  /** What has to stand for its samples, and where; null where they stay. */
  replaced: { start: number; end: number; bytes: Uint8Array } | null;
  pixels: number;
  usesCmyk: boolean;
  usesLzw: boolean;
}

const [E, I] = [0x45, 0x49];

// Samples may hold the letters by chance; content goes on in printable characters, samples hardly do for so long.
const LOOK_AHEAD_BYTES = 12;

function isTextAfter(bytes: Uint8Array, from: number): boolean {
  return bytes.subarray(from, from + LOOK_AHEAD_BYTES).every((byte) => (byte >= 0x20 && byte < 0x7f) || isWhite(byte));
}

function isEnd(bytes: Uint8Array, at: number): boolean {
  return (
    bytes[at] === E &&
    bytes[at + 1] === I &&
    isWhite(bytes[at - 1]) &&
    isWhite(bytes[at + 2]) &&
    isTextAfter(bytes, at + 2)
  );
}

function endOfSamples(bytes: Uint8Array, from: number): number {
  for (let end = bytes.indexOf(E, from); end >= 0; end = bytes.indexOf(E, end + 1)) if (isEnd(bytes, end)) return end;
  return bytes.length;
}

// ISO 32000-1, tables 93 and 94.
const FULL_KEYS: ReadonlyMap<string, string> = new Map([
  ['W', 'Width'],
  ['H', 'Height'],
  ['BPC', 'BitsPerComponent'],
  ['CS', 'ColorSpace'],
  ['IM', 'ImageMask'],
  ['F', 'Filter'],
  ['DP', 'DecodeParms'],
]);
const CMYK_SPACES = new Set(['CMYK', 'DeviceCMYK']);

/** The dictionary of an inline image, as far as it is looked at, and where its samples begin. */
interface Described {
  start: number;
  numberOf: (key: string) => number | undefined;
  filters: readonly Filter[];
  isMask: boolean;
  usesCmyk: boolean;
}

// Colours and parameters of real ones have some dozen.
const MAX_UNITS = 4096;

// A value is a lexical unit, or all of them between brackets.
function valueAt(bytes: Uint8Array, from: number, budget: Budget): { tokens: Token[]; end: number } {
  const tokens: Token[] = [];
  let [at, depth] = [from, 0];
  do {
    const token = tokenAt(bytes, at);
    at = token.end;
    budget.spend('tokens', 1);
    if (tokens.length === MAX_UNITS) throw damaged(fault('picture-not-understood'));
    tokens.push(token);
    if (token.kind === '[' || token.kind === '<<') depth += 1;
    else if (token.kind === ']' || token.kind === '>>') depth -= 1;
    if (token.kind === 'end') break;
  } while (depth > 0);
  return { tokens, end: at };
}

function describedAt(bytes: Uint8Array, from: number, budget: Budget): Described | null {
  const values = new Map<string, Token[]>();
  let at = from;
  for (;;) {
    const key = tokenAt(bytes, at);
    if (key.kind === 'end') return null;
    const text = tokenText(bytes, key);
    if (key.kind === 'word' && text === 'ID') break;
    const value = valueAt(bytes, key.end, budget);
    const name = nameValue(text);
    values.set(FULL_KEYS.get(name) ?? name, value.tokens);
    at = value.end;
  }
  const texts = (key: string): string[] => (values.get(key) ?? []).map((token) => tokenText(bytes, token));
  const names = (key: string): string[] =>
    (values.get(key) ?? []).flatMap((token) => (token.kind === 'name' ? [nameValue(tokenText(bytes, token))] : []));
  const numberAfter = (key: string, parameter: string): number | undefined => {
    const within = texts(key);
    const index = within.indexOf(`/${parameter}`);
    return index < 0 ? undefined : numberValue(within[index + 1] ?? '');
  };
  const parameters = new Map(
    ['Columns', 'Predictor', 'Colors', 'BitsPerComponent', 'EarlyChange'].flatMap((parameter): [string, number][] => {
      const value = numberAfter('DecodeParms', parameter);
      return value === undefined ? [] : [[parameter, value]];
    }),
  );
  return {
    // One white space character stands between `ID` and the samples.
    start: tokenAt(bytes, at).end + 1,
    numberOf: (key) => {
      const [text] = texts(key);
      return text === undefined ? undefined : numberValue(text);
    },
    filters: names('Filter').map((name) => ({ name: fullFilterName(name), parameters })),
    isMask: texts('ImageMask')[0] === 'true',
    usesCmyk: names('ColorSpace').some((name) => CMYK_SPACES.has(name)),
  };
}

const tooManyPixels = (): RefusedError =>
  new RefusedError('too-large', fault('picture-more-than-million-pixels', { imagePixels: LIMITS.imagePixels / 1e6 }));

// A colour has four components at most, or one for each of its inks, of which eight are many.
const MAX_COMPONENTS = 8;
const FAX_COLUMNS = 1728;
const SLACK_BYTES = 64;

function refuseSwelling(samples: Uint8Array, { filters, numberOf, isMask }: Described, budget: Budget): void {
  if (filters.length === 0) return;
  if (filters.some(({ name }) => name === 'CCITTFaxDecode')) {
    // A row takes a bit at least.
    const columns = Number(filters[0]?.parameters.get('Columns') ?? FAX_COLUMNS);
    if (filters.length > 1 || !(columns * 8 * samples.length <= LIMITS.imagePixels)) throw tooManyPixels();
    return;
  }
  const [columns, rows] = [numberOf('Width') ?? 0, numberOf('Height') ?? 0];
  const bits = isMask ? 1 : MAX_COMPONENTS * (numberOf('BitsPerComponent') ?? 8);
  const most = rows * (Math.ceil((columns * bits) / 8) + 1) + SLACK_BYTES;
  const decoded = decodeStream(samples, filters, (object) => object ?? null, budget);
  if (!(decoded.length <= most)) throw new RefusedError('too-large', fault('picture-unpacks-more-than-size'));
}

function cleanedPhotograph(samples: Uint8Array, { filters, numberOf }: Described): Uint8Array {
  if (filters.length > 1) throw damaged(fault('picture-packed-twice-over-cannot-looked'));
  const jpeg = cleanEmbeddedJpeg(samples);
  if (jpeg.columns !== numberOf('Width') || jpeg.rows !== numberOf('Height'))
    throw damaged(fault('picture-not-size-says'));
  return jpeg.bytes;
}

/**
 * Goes through an inline image (ISO 32000-1, 8.9.7). One without an end reaches to the end of the content. Refuses what unpacks to more than it
 * says, and a photograph that cannot be cleaned of what its camera wrote.
 *
 * @param from after its `BI`
 */
export function cleanInlineImage(bytes: Uint8Array, from: number, budget: Budget): InlineImage {
  const found = describedAt(bytes, from, budget);
  if (!found) return { end: bytes.length, replaced: null, pixels: 0, usesCmyk: false, usesLzw: false };
  const { start, filters, numberOf, usesCmyk } = found;
  const end = endOfSamples(bytes, start);
  const samples = bytes.subarray(start, end);
  const pixels = (numberOf('Width') ?? 0) * (numberOf('Height') ?? 0);
  if (!(pixels <= LIMITS.imagePixels)) throw tooManyPixels();
  const isPhotograph = filters.some(({ name }) => name === 'DCTDecode');
  if (!isPhotograph) refuseSwelling(samples, found, budget);
  return {
    end: Math.min(bytes.length, end + 2),
    // The white space before `EI` stays.
    replaced: isPhotograph ? { start, end: Math.max(start, end - 1), bytes: cleanedPhotograph(samples, found) } : null,
    pixels,
    usesCmyk,
    usesLzw: filters.some(({ name }) => name === 'LZWDecode'),
  };
}
