import { FIELDS } from './generated/fields-en.ts';

/** Id of the title and the help of a field of the record. */
export type FieldText = keyof typeof FIELDS;

/** Returns title and description of a field in English, as in the published schema. */
export function fieldText(id: FieldText): { title: string; description: string } {
  const { title, help } = FIELDS[id];
  return { title, description: help };
}
