import { type Fault, fault } from '../../text/faults.ts';
import { FaultSet } from '../bytes/fault-set.ts';
import {
  dictionaryOf,
  isArray,
  isDictionary,
  nameOf,
  type PdfDictionary,
  type PdfObject,
  type PdfStream,
} from '../pdf-object.ts';
import { cleanContent } from './clean-content.ts';
import type { ContentWatcher, FontChoice } from './content-watcher.ts';
import { type Drawing, DrawingCosts } from './drawing-costs.ts';
import { drawnLetters } from './drawn-letters.ts';
import type { PdfFile } from './pdf-file.ts';
import { UsedCodes } from './used-codes.ts';

const CMYK = fault('uses-cmyk-colour-without-saying');
const LZW = fault('holds-parts-packed-lzw');

function use(drawing: Drawing, used: PdfObject, count = 1): void {
  drawing.uses.set(used, (drawing.uses.get(used) ?? 0) + count);
}

/** The content streams of a file: what they show, what that costs, and what of it stands against the claims of the file it goes into. */
export class Contents {
  readonly costs = new DrawingCosts();
  readonly #file: PdfFile;
  readonly #codes: UsedCodes;
  readonly #obstacles = new FaultSet();
  readonly #letters = new Map<PdfDictionary, ReadonlyMap<number, PdfStream>>();

  constructor(file: PdfFile) {
    this.#file = file;
    this.#codes = new UsedCodes(file);
  }

  obstacles(): Fault[] {
    return [...this.#obstacles, ...this.#codes.obstacles()];
  }

  /**
   * Content without marks.
   *
   * @param shown the object that the content is of
   * @param resources what its names stand for, as it was read
   */
  cleaned(decoded: Uint8Array, shown: PdfObject, resources: PdfObject): Uint8Array {
    const drawing = this.costs.of(shown);
    const clean = cleanContent(decoded, this.#file.budget, this.#watcher(drawing, resources));
    drawing.operators += clean.operators;
    drawing.pixels += clean.pixels;
    if (clean.usesCmyk) this.#obstacles.add(CMYK);
    if (clean.usesLzw) this.#obstacles.add(LZW);
    if (clean.usesUnknown) this.#obstacles.add(fault('uses-operators-pdf-not-define'));
    return clean.bytes;
  }

  /** Notes that showing an object shows another. */
  uses(shown: PdfObject, used: PdfObject): void {
    use(this.costs.of(shown), used);
  }

  // What the resources name, each looked up once.
  #lookup(resources: PdfObject): (kind: string, name: string) => PdfObject {
    const { resolve } = this.#file;
    const known = new Map<string, PdfObject>();
    return (kind, name) => {
      const key = `${kind}/${name}`;
      const found = known.get(key);
      if (found !== undefined) return found;
      const kinds = dictionaryOf(resolve(resources));
      const object = resolve(dictionaryOf(resolve(kinds.get(kind))).get(name));
      known.set(key, object);
      return object;
    };
  }

  #watcher(drawing: Drawing, resources: PdfObject): ContentWatcher {
    const { resolve } = this.#file;
    const named = this.#lookup(resources);
    const stateNamed = (name: string): PdfDictionary => dictionaryOf(named('ExtGState', name));
    const fontOf = ({ kind, name }: FontChoice): PdfObject => {
      if (kind === 'font') return named('Font', name);
      const chosen = resolve(stateNamed(name).get('Font'));
      return isArray(chosen) ? resolve(chosen[0]) : null;
    };
    return {
      shows: (choice, string) => {
        const font = choice ? fontOf(choice) : null;
        if (isDictionary(font)) this.#show(drawing, font, string);
        else if (string !== '') this.#obstacles.add(fault('shows-text-without-font'));
      },
      draws: (name) => use(drawing, named('XObject', name)),
      paints: (name) => use(drawing, named('Pattern', name)),
      sets: (name) => {
        const state = stateNamed(name);
        const mask = dictionaryOf(resolve(state.get('SMask'))).get('G');
        if (mask !== undefined) use(drawing, resolve(mask));
        return state.has('Font');
      },
    };
  }

  #show(drawing: Drawing, font: PdfDictionary, string: string): void {
    this.#codes.note(font, string);
    if (nameOf(this.#file.resolve(font.get('Subtype'))) !== 'Type3') return;
    const letters = this.#letters.get(font) ?? drawnLetters(font, this.#file);
    this.#letters.set(font, letters);
    const counts = new Uint32Array(256);
    for (let i = 0; i < string.length; i++) {
      const code = string.charCodeAt(i);
      counts[code] = (counts[code] ?? 0) + 1;
    }
    for (const [code, letter] of letters) {
      const count = counts[code] ?? 0;
      if (count > 0) use(drawing, letter, count);
    }
  }
}
