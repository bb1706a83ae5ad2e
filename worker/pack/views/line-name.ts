import type { Printer } from '../../units/print.ts';
import { phrase } from '../../words/words.ts';

/** Lines that calc names after something in the record, in the English in which results are answered over HTTP. */
const NAMED_AFTER = [
  phrase`Scale {0}, error limit of its certificate`,
  phrase`{0}, step of the display`,
  phrase`{0}, arm as measured`,
  phrase`{0}, scatter of {1} runs`,
  phrase`{0}, mass as stated`,
  phrase`Unusable fuel, {0}`,
  phrase`Usable fuel, {0}`,
  phrase`Fuel, {0}`,
].map((text) => ({ text, pattern: new RegExp(`^${text.replace(/\{\d\}/g, '(.+)')}$`) }));

/** The name of a line of a result in the language of the record; names from the record itself stay as they are. */
export function lineName(say: Printer, name: string): string {
  for (const { text, pattern } of NAMED_AFTER) {
    const found = pattern.exec(name);
    if (!found) continue;
    const values = found.slice(1).map((value) => lineName(say, value));
    return say.term(text).replace(/\{(\d)\}/g, (_, place: string) => values[Number(place)] ?? '');
  }
  return name;
}
