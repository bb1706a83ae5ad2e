import { posted } from '../fixture.ts';
import { type FreeText, freeTexts, withAcceptedTexts } from '../hostile-text.ts';

/** Texts that the shape of the aircraft names itself, that the release says, or by which a record is found. */
const OWN =
  /^\/(release|workshop\/(paper|language)|aircraft\/(registration|address24|stations|loadingLimits|regime|envelope|c|e|m|n|p|u))/;

const FREE = new Map<string, FreeText[]>();

/** The free texts of a visit of the fixtures. */
function freeTextsOf(name: string): FreeText[] {
  const known = FREE.get(name) ?? freeTexts(posted(name)).filter(({ path }) => !OWN.test(path));
  FREE.set(name, known);
  return known;
}

/** The record, made from a visit of the fixtures, with every text of that visit as long as its field holds. */
export function longest(record: Record<string, unknown>, name: string, text: string): Record<string, unknown> {
  const texts = freeTextsOf(name)
    .filter(({ path }) => isIn(record, path))
    .map((field) => [field, text.slice(0, field.most).trim()] as const);
  return withAcceptedTexts(record, texts) as Record<string, unknown>;
}

function isIn(record: unknown, path: string): boolean {
  let at: unknown = record;
  for (const key of path.split('/').slice(1)) at = (at as Record<string, unknown> | undefined)?.[key];
  return typeof at === 'string';
}
