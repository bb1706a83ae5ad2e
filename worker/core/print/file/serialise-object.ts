import { isArray, isDictionary, isName, isReference, isString, type PdfObject } from '../pdf-object.ts';

const hex = (character: string): string => character.charCodeAt(0).toString(16).padStart(2, '0');

// Returns a name with everything but plain characters as #xx (ISO 32000-1, 7.3.5).
function nameText(name: string): string {
  return `/${name.replace(/[^!-~]|[#()<>[\]{}/%]/g, (character) => `#${hex(character)}`)}`;
}

// Largest magnitude that readers accept (ISO 32000-1, annex C.2), and the limit from which numbers are written as whole
// ones, without an exponent.
const MAX = 3.4e38;
const PLAIN = 1e15;

// No exponents; ten places are finer than any reader computes.
function numberText(given: number): string {
  const value = Math.max(-MAX, Math.min(MAX, given));
  if (Math.abs(value) >= PLAIN) return String(BigInt(Math.round(value)));
  return Number.isInteger(value) ? String(value) : value.toFixed(10).replace(/\.?0+$/, '');
}

/**
 * Returns an object that was read, as text in ASCII; `referenceTo` maps its references. A stream is a separate object,
 * so none is nested in another.
 */
export function serialiseObject(object: PdfObject, referenceTo: (number: number) => string): string {
  const text = (part: PdfObject): string => serialiseObject(part, referenceTo);
  if (isReference(object)) return referenceTo(object.number);
  if (isName(object)) return nameText(object.name);
  if (isString(object)) return `<${[...object.text].map(hex).join('')}>`;
  if (isArray(object)) return `[${object.map(text).join(' ')}]`;
  if (isDictionary(object))
    return `<<${[...object].map(([key, value]) => `${nameText(key)} ${text(value)}`).join('')}>>`;
  if (typeof object === 'number') return numberText(object);
  return typeof object === 'boolean' ? String(object) : 'null';
}
