import { LIMITS } from '../../limits.ts';
import { inEnglish, phrase } from '../../words/words.ts';
import { RefusedError } from '../refusal.ts';
import { cleanContent } from './clean-content.ts';
import { filtersOf } from './decode-stream.ts';
import { fontObstacles } from './font-obstacles.ts';
import type { PdfFile } from './pdf-file.ts';
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
} from './pdf-object.ts';

// Entries that describe how a form, pattern or image is drawn. What says where it came from or belonged is left behind.
const FORM = ['Type', 'Subtype', 'FormType', 'BBox', 'Matrix', 'Group'];
const PATTERN = ['Type', 'PatternType', 'PaintType', 'TilingType', 'BBox', 'XStep', 'YStep', 'Matrix'];
const IMAGE = [
  ...['Type', 'Subtype', 'Width', 'Height', 'ColorSpace', 'BitsPerComponent', 'Intent', 'ImageMask', 'Mask', 'Decode'],
  ...['SMask', 'SMaskInData', 'Matte', 'Filter', 'DecodeParms'],
];

// Parts of a file's frame that a careless entry could lead to.
const FRAME = new Set([
  'Catalog',
  'Pages',
  'Page',
  'StructTreeRoot',
  'StructElem',
  'Annot',
  'OCG',
  'OCMD',
  'Outlines',
  'Metadata',
]);

// ISO 32000-1, 11.3.5.
const BLEND_MODES = new Set(
  'Normal Compatible Multiply Screen Overlay Darken Lighten ColorDodge ColorBurn HardLight SoftLight Difference Exclusion Hue Saturation Color Luminosity'.split(
    ' ',
  ),
);

const CMYK = phrase`it uses CMYK colour without saying which`;
const LZW = phrase`it holds parts packed by LZW`;

const PRINTER_SETTINGS = ['TR', 'TR2', 'HT', 'HTP'];

type Convert = (object: PdfObject) => PdfObject;
type Entries = readonly (readonly [string, PdfObject])[];

/** Takes over from a file what its pages show, and nothing else; notes what stands against the claims of the file it goes into. */
export class Carrier {
  /** What was taken over, by number; references within lead here. */
  readonly objects = new Map<number, PdfObject>();
  readonly obstacles = new Set<string>();
  readonly #file: PdfFile;
  #newest: number;
  #ofPage: PdfReference | null = null;
  readonly #direct = new Map<PdfObject | undefined, PdfReference>();

  constructor(file: PdfFile) {
    this.#file = file;
    this.#newest = file.numbers.reduce((most, each) => Math.max(most, each), 0);
  }

  /** A new object. */
  add(object: PdfObject): PdfReference {
    this.objects.set(++this.#newest, object);
    return { kind: 'reference', number: this.#newest };
  }

  /** A content stream without marks. */
  content(decoded: Uint8Array, entries: Entries): PdfStream {
    const clean = cleanContent(decoded);
    if (clean.usesCmyk) this.obstacles.add(CMYK);
    if (clean.usesLzw) this.obstacles.add(LZW);
    if (clean.unknown.size > 0) this.obstacles.add(phrase`it uses operators that PDF does not define`);
    return { kind: 'stream', dictionary: new Map(entries), bytes: clean.bytes };
  }

  /** The resources of the page that is taken over next: old files leave out those of a form that uses its page's. */
  pageResources(object: PdfObject | undefined): PdfReference {
    if (isReference(object)) {
      this.#ofPage = object;
      this.resources(object);
      return object;
    }
    // Inherited ones are the same on all pages.
    const known = this.#direct.get(object);
    const reference = known ?? this.add(null);
    this.#direct.set(object, reference);
    this.#ofPage = reference;
    if (!known) this.objects.set(reference.number, this.resources(object));
    return reference;
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
    if (!isReference(object)) return convert(object ?? null);
    if (!this.objects.has(object.number)) {
      this.objects.set(object.number, null);
      this.objects.set(object.number, convert(this.#resolve(object)));
    }
    return object;
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
      [...dictionary.keys()].filter((key) => !left.includes(key)),
    );
  }

  #withResources(dictionary: PdfDictionary): [string, PdfObject] {
    const own = dictionary.get('Resources');
    return ['Resources', this.resources(this.#resolve(own) === null ? (this.#ofPage ?? own) : own)];
  }

  #font: Convert = (object) => {
    if (!isDictionary(object)) return null;
    for (const obstacle of fontObstacles(object, this.#file.resolve)) this.obstacles.add(obstacle);
    if (nameOf(this.#resolve(object.get('Subtype'))) !== 'Type3') return new Map(this.#entriesBut(object, []));
    const glyph: Convert = (found) => (isStream(found) ? this.content(this.#file.decode(found), []) : null);
    return new Map([
      ...this.#entriesBut(object, ['CharProcs', 'Resources']),
      ['CharProcs', this.#each(object.get('CharProcs'), glyph)],
      this.#withResources(object),
    ]);
  };

  #graphicsState: Convert = (object) => {
    const state = dictionaryOf(object);
    const modes = this.#resolve(state.get('BM'));
    for (const mode of isArray(modes) ? modes : [modes])
      if (mode !== null && !BLEND_MODES.has(nameOf(mode)))
        this.obstacles.add(phrase`it blends colours in a way that PDF does not define`);
    if (PRINTER_SETTINGS.some((key) => state.has(key)))
      this.obstacles.add(phrase`it has settings for one kind of printer`);
    return new Map(this.#entriesBut(state, []));
  };

  #value: Convert = (object) => {
    if (isName(object) && object.name === 'DeviceCMYK') this.obstacles.add(CMYK);
    if (isArray(object)) return object.map((each) => this.carry(each));
    if (isStream(object)) return this.#stream(object);
    if (!isDictionary(object)) return object;
    const type = nameOf(this.#resolve(object.get('Type')));
    if (FRAME.has(type)) return null;
    if (type === 'Font') return this.#font(object);
    if (type === 'ExtGState') return this.#graphicsState(object);
    return new Map(this.#entriesBut(object, []));
  };

  #stream: Convert = (object) => {
    if (!isStream(object)) return null;
    const { dictionary, bytes } = object;
    if (this.#resolve(dictionary.get('F')) !== null)
      throw new RefusedError('scripted', phrase`it takes parts of itself from other files`);
    const subtype = nameOf(this.#resolve(dictionary.get('Subtype')));
    const drawn = subtype === 'Form' ? FORM : this.#resolve(dictionary.get('PatternType')) === 1 ? PATTERN : null;
    if (drawn) {
      const entries = [...this.#entries(dictionary, drawn), this.#withResources(dictionary)];
      return this.content(this.#file.decode(object), entries);
    }
    if (subtype === 'PS') {
      this.obstacles.add(phrase`it holds PostScript`);
      return null;
    }
    this.#noteFilters(dictionary);
    if (subtype !== 'Image')
      return { kind: 'stream', dictionary: new Map(this.#entriesBut(dictionary, ['Length', 'Metadata'])), bytes };
    const pixels = Number(this.#resolve(dictionary.get('Width'))) * Number(this.#resolve(dictionary.get('Height')));
    if (!(pixels <= LIMITS.imagePixels))
      throw new RefusedError(
        'too-large',
        inEnglish`a picture in it has more than ${LIMITS.imagePixels / 1e6} million pixels`,
      );
    return { kind: 'stream', dictionary: new Map(this.#entries(dictionary, IMAGE)), bytes };
  };

  #noteFilters(dictionary: PdfDictionary): void {
    const filters = filtersOf(dictionary, this.#file.resolve);
    if (filters.includes('LZWDecode')) this.obstacles.add(LZW);
    if (filters.includes('JPXDecode')) this.obstacles.add(phrase`it holds pictures packed by JPEG 2000`);
    if (filters.includes('Crypt')) throw new RefusedError('encrypted', phrase`it is encrypted in part`);
  }
}
