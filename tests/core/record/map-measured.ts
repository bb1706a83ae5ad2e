import { visitJsonSchema } from '../../../worker/core/record/json-schema.ts';
import type { Quantity } from '../../../worker/core/units/quantity.ts';

type Node = Record<string, unknown>;

export interface Mapping {
  convert(value: number, quantity: Quantity): number;
  /** The key under which a measured number, or a list of them, then stands. @default as it was */
  rename?(key: string, quantity: Quantity): string;
}

/** A record with every number that it measures in its own units mapped, found along the published JSON Schema. */
export function mapMeasured(record: unknown, mapping: Mapping): unknown {
  return walk(visitJsonSchema(), record, mapping);
}

function walk(node: Node, value: unknown, mapping: Mapping): unknown {
  const quantity = node.quantity as Quantity | undefined;
  if (quantity) return mapping.convert(value as number, quantity);
  if (Array.isArray(value)) return value.map((entry) => walk(node.items as Node, entry, mapping));
  if (typeof value !== 'object' || value === null) return value;
  const fields = (optionOf(node, value as Node).properties ?? {}) as Record<string, Node>;
  return Object.fromEntries(
    Object.entries(value).map(([key, entry]) => {
      const field = fields[key] ?? {};
      const measured = (field.quantity ?? (field.items as Node | undefined)?.quantity) as Quantity | undefined;
      const name = measured && mapping.rename ? mapping.rename(key, measured) : key;
      return [name, walk(field, entry, mapping)];
    }),
  );
}

/** Of several kinds, the one whose fixed words the value has, whatever field distinguishes them. */
export function optionOf(node: Node, value: Node): Node {
  const options = (node.oneOf ?? node.anyOf) as Node[] | undefined;
  const fits = (option: Node): boolean =>
    Object.entries((option.properties ?? {}) as Record<string, Node>).every(([key, { enum: values, const: fixed }]) => {
      const words = (values as unknown[] | undefined) ?? (fixed === undefined ? undefined : [fixed]);
      return value[key] === undefined || !words || words.includes(value[key]);
    });
  return options?.find(fits) ?? node;
}
