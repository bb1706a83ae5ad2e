import { createScanner, type JSONScanner } from 'jsonc-parser';
import { LIMITS } from '../../core/limits.ts';
import { pointer } from '../../core/record/pointer.ts';
import type { Defect } from './problem.ts';

/** Token numbers of the scanner: it declares them in a form that does not exist at run time. */
const TOKEN = { openBrace: 1, closeBrace: 2, openBracket: 3, closeBracket: 4, comma: 5, string: 10, end: 17 } as const;

/** Open object or array while the text is read. */
interface Level {
  /** Keys read so far; undefined in an array. */
  keys: Set<string> | undefined;
  /** Key or index of the current value. */
  step: string | number;
  isKeyNext: boolean;
}

/**
 * Returns defects that JSON allows and a record must not have: excessive nesting, an object with too many keys,
 * duplicate keys (parsers keep either), and keys that change prototypes. Works on any text, in one pass and without
 * recursion, up to an unmatched closing bracket: the rest is not JSON, and its nesting means nothing.
 */
export function structuralDefects(text: string): Defect[] {
  const scanner = createScanner(text, true);
  const levels: Level[] = [];
  const defects: Defect[] = [];
  for (let token: number = scanner.scan(); token !== TOKEN.end; token = scanner.scan()) {
    const level = levels.at(-1);
    if (token === TOKEN.openBrace) levels.push({ keys: new Set(), step: '', isKeyNext: true });
    else if (token === TOKEN.openBracket) levels.push({ keys: undefined, step: 0, isKeyNext: false });
    else if (token === TOKEN.closeBrace || token === TOKEN.closeBracket) {
      if (!level || (level.keys !== undefined) !== (token === TOKEN.closeBrace)) return defects;
      levels.pop();
    } else if (token === TOKEN.comma && level) advance(level);
    else if (token === TOKEN.string && level?.isKeyNext) defects.push(...keyDefects(scanner, level, levels));
    if (levels.length > LIMITS.jsonDepth) return [...defects, tooDeep(levels)];
    if ((level?.keys?.size ?? 0) > LIMITS.jsonKeys) return [...defects, tooManyKeys(levels)];
    if (defects.length >= LIMITS.recordIssues) return defects;
  }
  return defects;
}

function advance(level: Level): void {
  if (typeof level.step === 'number') level.step += 1;
  else level.isKeyNext = true;
}

function keyDefects(scanner: JSONScanner, level: Level, levels: readonly Level[]): Defect[] {
  const key = scanner.getTokenValue();
  const isTwice = level.keys?.has(key) ?? false;
  level.keys?.add(key);
  level.step = key;
  level.isKeyNext = false;
  if (key !== '__proto__' && !isTwice) return [];
  const place = { severity: 'blocks', pointer: pathOf(levels) } as const;
  if (key === '__proto__') {
    const sentence = `Cannot read the JSON: ${place.pointer} must not be a key`;
    return [{ code: 'JSON_KEY_FORBIDDEN', ...place, sentence, remedy: 'Remove it' }];
  }
  const sentence = `Cannot read the JSON: ${place.pointer} must be given once: it is given twice`;
  return [{ code: 'JSON_KEY_TWICE', ...place, sentence, remedy: 'Remove the one that is not meant' }];
}

const pathOf = (levels: readonly Level[]): string => pointer(...levels.map(({ step }) => step));

function tooManyKeys(levels: readonly Level[]): Defect {
  return {
    code: 'JSON_KEYS_TOO_MANY',
    severity: 'blocks',
    pointer: pathOf(levels.slice(0, -1)),
    sentence: `Cannot read the JSON: an object must not have more than ${LIMITS.jsonKeys} keys`,
    remedy: 'Remove the keys that no record has; the schema lists those that it may have',
  };
}

function tooDeep(levels: readonly Level[]): Defect {
  return {
    code: 'JSON_TOO_DEEP',
    severity: 'blocks',
    pointer: pathOf(levels.slice(0, -1)),
    sentence: `Cannot read the JSON: nesting must not exceed ${LIMITS.jsonDepth} levels`,
    remedy: 'Nest less; no part of a record needs as many levels',
  };
}
