import { type Fault, fault } from '../../text/faults.ts';
import { FaultSet } from '../bytes/fault-set.ts';
import {
  dictionaryOf,
  isArray,
  isDictionary,
  isName,
  isReference,
  isStream,
  nameOf,
  type PdfDictionary,
  type PdfObject,
  type PdfReference,
  type PdfStream,
} from '../pdf-object.ts';
import { damaged, RefusedError } from '../refusal.ts';
import { BLEND_MODES, FORM, FRAME, GLYPH_LISTS, IMAGE, NEVER, PATTERN } from './carried-entries.ts';
import { Contents } from './contents.ts';
import { carriedBytes, carriedSamples, pixelsOf, type Reading } from './copy-image.ts';
import { fontObstacles } from './font-obstacles.ts';
import { InkList, type Inks } from './inks.ts';
import type { Box } from './page-box.ts';
import { refuseCrowded } from './pattern-tiles.ts';
import type { PdfFile } from './pdf-file.ts';

const CMYK = fault('uses-cmyk-colour-without-saying');

const PRINTER_SETTINGS = ['TR', 'TR2', 'HT', 'HTP'];

// What real pages show leads on from object to object some dozen times.
const DEEPEST = 256;

// Where no page is known: the largest there may be (ISO 32000-1, annex C.2).
const LARGEST_PAGE: Box = [0, 0, 14_400, 14_400];

type Convert = (object: PdfObject) => PdfObject;
type Entries = readonly (readonly [string, PdfObject])[];

/** Takes over from a file what its pages show, and nothing else; notes what stands against the claims of the file it goes into. */
export class PdfCopier {
  /** What was taken over, by number; references within lead here. */
  readonly objects = new Map<number, PdfObject>();
  readonly #obstacles = new FaultSet();
  readonly #file: PdfFile;
  readonly #reading: Reading;
  readonly #contents: Contents;
  readonly #inks: InkList;
  #newest: number;
  #depth = 0;
  #page: { carried: PdfReference | null; given: PdfObject; box: Box } = {
    carried: null,
    given: null,
    box: LARGEST_PAGE,
  };
  readonly #direct = new Map<PdfObject | undefined, PdfReference>();

  /** @param verify see `Reading` */
  constructor(file: PdfFile, verify: boolean) {
    this.#file = file;
    this.#reading = { resolve: file.resolve, budget: file.budget, verify };
    this.#contents = new Contents(file);
    this.#inks = new InkList(file);
    this.#newest = file.numbers.reduce((most, each) => Math.max(most, each), 0);
  }

  /** Why a file that holds what was taken over cannot make the archival claims, in words. */
  obstacles(): Fault[] {
    for (const fault of [...this.#contents.obstacles(), ...this.#inks.obstacles]) this.#obstacles.add(fault);
    return [...this.#obstacles];
  }

  get inks(): Inks {
    return this.#inks.inks;
  }

  /** A new object. */
  add(object: PdfObject): PdfReference {
    this.objects.set(++this.#newest, object);
    return { kind: 'reference', number: this.#newest };
  }

  /**
   * A content stream without marks.
   *
   * @param shown the object that the content is of
   * @param resources what its names stand for, as it was read
   */
  content(decoded: Uint8Array, entries: Entries, shown: PdfObject, resources: PdfObject): PdfStream {
    const bytes = this.#contents.cleaned(decoded, shown, resources);
    return { kind: 'stream', dictionary: new Map(entries), bytes };
  }

  /** Charges what a reader has to do to show a page with what is shown over its own content. */
  chargePage(page: PdfObject, looks: readonly PdfObject[]): void {
    for (const look of looks) this.#contents.uses(page, look);
    this.#contents.costs.charge(page, this.#file.budget);
  }

  /**
   * The resources of the page that is taken over next: old files leave out those of a form that uses its page's.
   *
   * @param box as the page is seen
   */
  pageResources(object: PdfObject | undefined, box: Box): PdfReference {
    if (isReference(object)) {
      this.#page = { carried: object, given: object, box };
      this.resources(object);
      return object;
    }
    // Inherited ones are the same on all pages.
    const known = this.#direct.get(object);
    const carried = known ?? this.add(null);
    this.#direct.set(object, carried);
    this.#page = { carried, given: object ?? null, box };
    if (!known) this.objects.set(carried.number, this.resources(object));
    return carried;
  }

  /** What content names: fonts, images, colour spaces; marks are not among them. */
  resources(object: PdfObject | undefined): PdfObject {
    return this.#shared(object, (found) => {
      const given = dictionaryOf(found);
      const carried = new Map<string, PdfObject>();
      const take = (key: string, convert: Convert): void => {
        if (given.has(key)) carried.set(key, this.#each(given.get(key), convert));
      };
      for (const key of ['XObject', 'ColorSpace', 'Pattern', 'Shading']) take(key, this.#value);
      take('Font', this.#font);
      take('ExtGState', this.#graphicsState);
      return carried;
    });
  }

  /** Any object with all it leads to. */
  carry(object: PdfObject | undefined): PdfObject {
    return this.#shared(object, this.#value);
  }

  // What a reference leads to is taken over once.
  #shared(object: PdfObject | undefined, convert: Convert): PdfObject {
    if (!isReference(object)) return this.#converted(object ?? null, convert);
    if (!this.objects.has(object.number)) {
      this.objects.set(object.number, null);
      this.objects.set(object.number, this.#converted(this.#resolve(object), convert));
    }
    return object;
  }

  #converted(object: PdfObject, convert: Convert): PdfObject {
    this.#file.budget.spend('objects', 1);
    if (this.#depth === DEEPEST) throw damaged(fault('objects-nested-too-deeply'));
    this.#depth += 1;
    const converted = convert(object);
    this.#depth -= 1;
    return converted;
  }

  #resolve(object: PdfObject | undefined): PdfObject {
    return this.#file.resolve(object);
  }

  #each(object: PdfObject | undefined, convert: Convert): PdfObject {
    return new Map([...dictionaryOf(this.#resolve(object))].map(([key, value]) => [key, this.#shared(value, convert)]));
  }

  #entries(dictionary: PdfDictionary, keys: Iterable<string>): [string, PdfObject][] {
    return [...keys].flatMap((key): [string, PdfObject][] =>
      dictionary.has(key) ? [[key, this.carry(dictionary.get(key))]] : [],
    );
  }

  #entriesBut(dictionary: PdfDictionary, left: readonly string[]): [string, PdfObject][] {
    return this.#entries(
      dictionary,
      [...dictionary.keys()].filter((key) => !left.includes(key) && !NEVER.includes(key)),
    );
  }

  // Its own resources, or where it has none those of its page: as they were read, and as they are carried.
  #resourcesOf(dictionary: PdfDictionary): { given: PdfObject; entry: [string, PdfObject] } {
    const own = dictionary.get('Resources') ?? null;
    const hasOwn = this.#resolve(own) !== null;
    const given = hasOwn ? own : this.#page.given;
    return { given, entry: ['Resources', this.resources(hasOwn ? own : (this.#page.carried ?? own))] };
  }

  #font: Convert = (object) => {
    if (!isDictionary(object)) return null;
    for (const obstacle of fontObstacles(object, this.#file.resolve)) this.#obstacles.add(obstacle);
    if (nameOf(this.#resolve(object.get('Subtype'))) !== 'Type3') return new Map(this.#entriesBut(object, []));
    const { given, entry } = this.#resourcesOf(object);
    const glyph: Convert = (found) =>
      isStream(found) ? this.content(this.#file.decode(found), [], found, given) : null;
    return new Map([
      ...this.#entriesBut(object, ['CharProcs', 'Resources']),
      ['CharProcs', this.#each(object.get('CharProcs'), glyph)],
      entry,
    ]);
  };

  #graphicsState: Convert = (object) => {
    const state = dictionaryOf(object);
    const given = this.#resolve(state.get('BM'));
    const modes = isArray(given) ? given : [given];
    // Many states may name one list.
    this.#file.budget.spend('objects', modes.length);
    for (const mode of modes)
      if (mode !== null && !BLEND_MODES.has(nameOf(mode)))
        this.#obstacles.add(fault('blends-colours-way-pdf-not-define'));
    if (PRINTER_SETTINGS.some((key) => state.has(key))) this.#obstacles.add(fault('settings-one-kind-printer'));
    return new Map(this.#entriesBut(state, []));
  };

  #value: Convert = (object) => {
    if (isName(object) && object.name === 'DeviceCMYK') this.#obstacles.add(CMYK);
    if (isArray(object)) {
      this.#inks.note(object);
      return object.map((each) => this.carry(each));
    }
    const type = nameOf(this.#resolve(dictionaryOf(object).get('Type')));
    if (FRAME.has(type)) return null;
    if (isStream(object)) return this.#stream(object);
    if (!isDictionary(object)) return object;
    if (type === 'Font') return this.#font(object);
    if (type === 'ExtGState') return this.#graphicsState(object);
    return new Map(this.#entriesBut(object, object.has('FontName') ? GLYPH_LISTS : []));
  };

  #stream: Convert = (object) => {
    if (!isStream(object)) return null;
    const { dictionary } = object;
    if (this.#resolve(dictionary.get('F')) !== null)
      throw new RefusedError('scripted', fault('takes-parts-itself-other-files'));
    const subtype = nameOf(this.#resolve(dictionary.get('Subtype')));
    const isPattern = this.#resolve(dictionary.get('PatternType')) === 1;
    if (isPattern) refuseCrowded(dictionary, this.#page.box, this.#file.resolve);
    if (subtype === 'Form' || isPattern) {
      const { given, entry } = this.#resourcesOf(dictionary);
      const entries = [...this.#entries(dictionary, subtype === 'Form' ? FORM : PATTERN), entry];
      return this.content(this.#file.decode(object), entries, object, given);
    }
    if (subtype === 'PS') {
      this.#obstacles.add(fault('holds-postscript'));
      return null;
    }
    if (subtype !== 'Image') {
      const { bytes, packing } = carriedBytes(object, this.#reading);
      const entries = this.#entriesBut(dictionary, ['Length', 'Filter', 'DecodeParms']);
      return { kind: 'stream', dictionary: new Map([...entries, ...packing]), bytes };
    }
    this.#contents.costs.of(object).pixels = pixelsOf(dictionary, this.#file.resolve);
    for (const key of ['SMask', 'Mask']) {
      const mask = this.#resolve(dictionary.get(key));
      if (isStream(mask)) this.#contents.uses(object, mask);
    }
    const { bytes, packing } = carriedSamples(object, this.#reading);
    return { kind: 'stream', dictionary: new Map([...this.#entries(dictionary, IMAGE), ...packing]), bytes };
  };
}
