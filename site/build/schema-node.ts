import { LIMITS } from '../../worker/core/limits.ts';
import { ENTRIES, type EntryKind } from '../../worker/core/record/meaning.ts';

/** Part of JSON Schema that the schemas of this service use. */
export interface SchemaNode {
  $ref?: string;
  type?: string;
  title?: string;
  description?: string;
  examples?: readonly unknown[];
  const?: unknown;
  enum?: readonly unknown[];
  format?: string;
  unit?: string;
  identifies?: EntryKind;
  refersTo?: readonly EntryKind[];
  notBefore?: readonly string[];
  notAfter?: readonly string[];
  within?: string;
  minimum?: number;
  maximum?: number;
  minLength?: number;
  maxLength?: number;
  minItems?: number;
  maxItems?: number;
  items?: SchemaNode;
  properties?: Readonly<Record<string, SchemaNode>>;
  required?: readonly string[];
  oneOf?: readonly SchemaNode[];
  anyOf?: readonly SchemaNode[];
}

const NAMES: Readonly<Record<string, string>> = { string: 'text', boolean: 'true or false', integer: 'whole number' };
const FORMATS: Readonly<Record<string, string>> = { date: 'date', 'date-time': 'moment' };

/** Returns the type of a field, in a few words. */
export function kindOf(node: SchemaNode): string {
  const { type = 'any value', format, items, oneOf, anyOf } = node;
  if (node.const !== undefined) return `always ${node.const}`;
  if (node.enum) return node.enum.map(String).join(' | ');
  if (items) return `list of ${isPart(items) ? 'parts' : plural(kindOf(items))}`;
  if (oneOf ?? anyOf) return (oneOf ?? anyOf ?? []).map(kindOf).join(' or ');
  if (type === 'object') return 'part';
  return FORMATS[format ?? ''] ?? NAMES[type] ?? type;
}

/** Returns the relation of a value to the rest of the record, in a few words; empty if none. */
export function relationOf({ identifies, refersTo, notBefore = [], notAfter = [], within }: SchemaNode): string {
  const times = [
    ...(notBefore.length > 0 ? [`not before ${notBefore.join(' or ')}`] : []),
    ...(notAfter.length > 0 ? [`not after ${notAfter.join(' or ')}`] : []),
  ];
  if (identifies) return `identifies: ${ENTRIES[identifies]}`;
  if (refersTo) return `refers to: ${refersTo.map((kind) => ENTRIES[kind]).join(', ')}`;
  return within === undefined ? times.join(', ') : `within the ${within}`;
}

/** Whether the node has fields to describe. */
export function isPart({ properties, oneOf }: SchemaNode): boolean {
  return properties !== undefined || (oneOf ?? []).some(isPart);
}

/** Returns the bounds of a number, a text or a list. The bound common to all numbers is left out. */
export function boundsOf({ minimum, maximum, maxLength, maxItems, minItems, type }: SchemaNode): string {
  if (type === 'string') return maxLength === undefined ? '' : `up to ${maxLength} characters`;
  if (type === 'array') return maxItems === undefined ? '' : `${minItems ?? 0} to ${maxItems}`;
  const least = minimum !== undefined && minimum > -LIMITS.number ? `${minimum} or more` : '';
  if (maximum === undefined || maximum >= LIMITS.number) return least;
  return least === '' ? `${maximum} or less` : `${minimum} to ${maximum}`;
}

const plural = (kind: string): string =>
  kind.includes('|') ? `values: ${kind}` : kind === 'text' ? 'texts' : `${kind}s`;
