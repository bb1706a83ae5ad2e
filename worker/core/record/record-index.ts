import { QUANTITY_SUFFIX } from '../units/quantity.ts';
import { type IdentifierMeaning, type Meaning, quantityIn, type TextMeaning } from './meaning.ts';
import type { Schema } from './schema-node.ts';
import { type SchemaTree, treeOf } from './schema-tree.ts';

export type FieldKind = 'identifier' | 'person' | 'reference' | 'timestamp' | 'past-date' | 'arm' | 'text';

export type MeaningOf<Kind extends FieldKind> = Kind extends 'text'
  ? TextMeaning | IdentifierMeaning
  : Extract<Meaning, { kind: Kind }>;

type ValueOf<Kind extends FieldKind> = Kind extends 'arm' ? number : string;

/** A field of one kind in a record. */
export interface Place<Kind extends FieldKind = FieldKind> {
  value: ValueOf<Kind>;
  /** Path in the record as posted. */
  path: readonly (string | number)[];
  means: MeaningOf<Kind>;
  /** Parts that contain it, from the record itself inwards. */
  around: readonly Around[];
}

/** A part of a record, with the data that names it. */
export interface Around {
  value: Readonly<Record<string, unknown>>;
  /** Length of its path. */
  depth: number;
  /** Index in its list, from 0. */
  position: number | undefined;
  calledBy: CalledBy | undefined;
}

/** Field that names a part in a sentence. */
interface CalledBy {
  key: string;
  /** Set if its value is a choice of the schema, printed in the language of the record, and not free text. */
  isChoice: boolean;
}

/** As posted, or in calculation units, in which measured fields have their unit in their names. */
export type RecordForm = 'posted' | 'calculation';

type Plan<Kind extends FieldKind> =
  | { at: 'field'; means: MeaningOf<Kind> }
  | { at: 'list'; item: Plan<Kind> }
  | { at: 'variants'; by: string; variants: ReadonlyMap<unknown, Plan<Kind>> }
  | { at: 'part'; calledBy: CalledBy | undefined; fields: readonly PlannedField<Kind>[] };

interface PlannedField<Kind extends FieldKind> {
  key: string;
  /** Name in calculation units. */
  renamed: string;
  plan: Plan<Kind>;
}

/** Callback for each field of a kind; the location is built only when it is called for. */
export type FieldVisitor<Kind extends FieldKind> = (value: ValueOf<Kind>, place: () => Place<Kind>) => void;

/** Walk over all values of one schema, for one kind of field. */
export type FieldWalk<Kind extends FieldKind> = (value: object, form: RecordForm, visit: FieldVisitor<Kind>) => void;

/**
 * Returns the walk over every field of a kind. Parts without a field of the kind are not entered: the schema decides this,
 * once.
 *
 * @example recordIndex(VisitRecord, 'timestamp')(visit, 'calculation', (value, place) => …)
 */
export function recordIndex<Kind extends FieldKind>(schema: Schema, kind: Kind): FieldWalk<Kind> {
  const plan = planOf(treeOf(schema), kind);
  return (value, form, visit) => {
    if (plan) walk(plan, value, { form, visit, path: [], around: [] });
  };
}

function planOf<Kind extends FieldKind>({ means, shape }: SchemaTree, kind: Kind): Plan<Kind> | undefined {
  if (isOfKind(means, kind)) return { at: 'field', means };
  if (shape.kind === 'value') return undefined;
  if (shape.kind === 'list') {
    const item = planOf(shape.item, kind);
    return item && { at: 'list', item };
  }
  if (shape.kind === 'variants') {
    const variants = [...shape.variants].flatMap(([name, variant]) => {
      const plan = planOf(variant, kind);
      return plan ? [[name, plan] as const] : [];
    });
    return variants.length === 0 ? undefined : { at: 'variants', by: shape.by, variants: new Map(variants) };
  }
  const fields = [...shape.fields].flatMap(([key, field]) => {
    const plan = planOf(field, kind);
    return plan ? [{ key, renamed: renamed(key, field), plan }] : [];
  });
  return fields.length === 0 ? undefined : { at: 'part', calledBy: calledBy(means, shape.fields), fields };
}

function isOfKind<Kind extends FieldKind>(means: Meaning | undefined, kind: Kind): means is MeaningOf<Kind> & Meaning {
  return means !== undefined && (means.kind === kind || (kind === 'text' && 'isText' in means));
}

function renamed(key: string, { means }: SchemaTree): string {
  const quantity = quantityIn(means);
  return quantity === undefined ? key : key + QUANTITY_SUFFIX[quantity];
}

/** Returns the field that names a part: the one that it declares, or its identifier. */
function calledBy(means: Meaning | undefined, fields: ReadonlyMap<string, SchemaTree>): CalledBy | undefined {
  const identifier = [...fields].find(([, field]) => field.means?.kind === 'identifier')?.[0];
  const key = means?.kind === 'part' ? means.calledBy : identifier;
  return key === undefined ? undefined : { key, isChoice: fields.get(key)?.means === undefined };
}

interface Walk<Kind extends FieldKind> {
  form: RecordForm;
  visit: FieldVisitor<Kind>;
  /** Extended and shortened during the walk: few locations need a copy. */
  path: (string | number)[];
  around: Around[];
}

function walk<Kind extends FieldKind>(plan: Plan<Kind>, value: unknown, on: Walk<Kind>): void {
  if (plan.at === 'field') {
    const stated = value as ValueOf<Kind>;
    on.visit(stated, () => ({ value: stated, path: [...on.path], means: plan.means, around: [...on.around] }));
  } else if (plan.at === 'list') {
    for (const [index, item] of (value as readonly unknown[]).entries()) {
      on.path.push(index);
      walk(plan.item, item, on);
      on.path.pop();
    }
  } else walkPart(plan, value as Readonly<Record<string, unknown>>, on);
}

function walkPart<Kind extends FieldKind>(
  plan: Extract<Plan<Kind>, { at: 'part' | 'variants' }>,
  value: Readonly<Record<string, unknown>>,
  on: Walk<Kind>,
): void {
  if (plan.at === 'variants') {
    const variant = plan.variants.get(value[plan.by]);
    if (variant) walk(variant, value, on);
    return;
  }
  const last = on.path.at(-1);
  const position = typeof last === 'number' ? last : undefined;
  on.around.push({ value, depth: on.path.length, position, calledBy: plan.calledBy });
  for (const { key, renamed: name, plan: field } of plan.fields) {
    const stated = value[on.form === 'posted' ? key : name];
    if (stated === undefined) continue;
    on.path.push(key);
    walk(field, stated, on);
    on.path.pop();
  }
  on.around.pop();
}
