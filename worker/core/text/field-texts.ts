import { FIELDS } from './generated/fields-en.ts';

/** The id of the title and the help of a field of the record. */
export type FieldText = keyof typeof FIELDS;

/** Title and description of a field in English, as the published schema has them. */
export function fieldText(id: FieldText): { title: string; description: string } {
  const { title, help } = FIELDS[id];
  return { title, description: help };
}
