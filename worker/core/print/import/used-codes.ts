import { type Fault, fault } from '../../text/faults.ts';
import { FaultSet } from '../bytes/fault-set.ts';
import type { PdfDictionary } from '../pdf-object.ts';
import { type CodeCutter, codeCutterOf } from './font-codes.ts';
import { fontNameOf } from './font-obstacles.ts';
import { textOfCode } from './font-text.ts';
import { spendUnit } from './lexical-cost.ts';
import type { PdfFile } from './pdf-file.ts';

/** What of a font was shown. */
interface Use {
  cut: CodeCutter | null;
  codes: Set<number>;
  isClear: boolean;
}

// As many as a font can have glyphs.
const MAX_CODES = 65_536;

// Zero, the byte order mark and its mirror image are no text; what the private areas mean is known to nobody (ISO 19005-3, 6.2.11.7.2 and
// 6.2.11.7.3, from published validation profiles).
const NO_TEXT = /[\0\ufeff\ufffe]/;
const PRIVATE = /[\ue000-\uf8ff\u{f0000}-\u{10ffff}]/u;

/** Which codes of which fonts are shown, and what that keeps a file from claiming. */
export class UsedCodes {
  readonly #file: PdfFile;
  readonly #uses = new Map<PdfDictionary, Use>();

  constructor(file: PdfFile) {
    this.#file = file;
  }

  note(font: PdfDictionary, string: string): void {
    const use = this.#uses.get(font) ?? { cut: codeCutterOf(font, this.#file), codes: new Set(), isClear: true };
    this.#uses.set(font, use);
    // What is shown after that changes nothing.
    if (!use.isClear) return;
    const { codes } = use;
    const isWhole = use.cut?.(string, (code) => codes.add(code).size <= MAX_CODES) ?? false;
    use.isClear = isWhole && codes.size <= MAX_CODES;
  }

  /** Why a file that holds the fonts cannot say its text, in words; a font that says nothing of its text is named elsewhere. */
  obstacles(): Fault[] {
    return [...this.#uses].flatMap(([font, { codes, isClear }]) => {
      const textOf = textOfCode(font, this.#file);
      if (!textOf) return [];
      const name = fontNameOf(font, this.#file.resolve);
      if (!isClear) return [fault('strings-font-cannot-read-table-their', { name })];
      const found = new FaultSet();
      for (const code of codes) {
        const text = textOf(code);
        spendUnit(this.#file.budget, 0, text?.length ?? 0);
        if (text === undefined || text === '') found.add(fault('font-shows-characters-without-saying-text', { name }));
        else if (NO_TEXT.test(text)) found.add(fault('font-shows-characters-says-none', { name }));
        else if (PRIVATE.test(text)) found.add(fault('font-shows-characters-whose-text-private', { name }));
      }
      return [...found];
    });
  }
}
