import { fault } from '../../text/faults.ts';
import type { Budget } from '../bytes/budget.ts';
import { damaged } from '../refusal.ts';
import { type ContentWatcher, type FontChoice, UNWATCHED } from './content-watcher.ts';
import { cleanInlineImage } from './inline-image.ts';
import { type Token, tokenAt } from './lexer.ts';
import { spendBytes, spendUnit } from './lexical-cost.ts';
import { hexValue, nameValue, stringValue, tokenText } from './token-value.ts';

/** Content without marks, and what in it matters to the claims of the file it goes into. */
export interface CleanContent {
  bytes: Uint8Array;
  usesCmyk: boolean;
  usesLzw: boolean;
  /** Operators that PDF does not define. */
  usesUnknown: boolean;
  /** How many there are of all kinds. */
  operators: number;
  /** Pixels of the pictures within it. */
  pixels: number;
}

// ISO 32000-1, annex A.
const OPERATORS = new Set(
  'b B b* B* BDC BI BMC BT BX c cm CS cs d d0 d1 Do DP EI EMC ET EX f F f* G g gs h i ID j J K k l m M MP n q Q re RG rg ri s S SC sc SCN scn sh T* Tc Td TD Tf Tj TJ TL Tm Tr Ts Tw Tz v w W W* y \' "'.split(
    ' ',
  ),
);

// ISO 32000-1, table 320.
const MARKS = new Set(['BMC', 'BDC', 'EMC', 'MP', 'DP']);

const OPERANDS = new Set(['true', 'false', 'null']);
const LONGEST_WORD = 5;

// Which of the two colours an operator paints with (ISO 32000-1, tables 60, 106, 87).
const FILLING = new Set(['f', 'F', 'f*', 'B', 'B*', 'b', 'b*', 'Tj', 'TJ', "'", '"', 'Do']);
const STROKING = new Set(['S', 's', 'B', 'B*', 'b', 'b*', 'Tj', 'TJ', "'", '"']);
const SHOWING = new Set(['Tj', 'TJ', "'", '"']);
const FILL_COLOURS = new Set(['g', 'rg', 'k', 'cs', 'sc', 'scn']);
const STROKE_COLOURS = new Set(['G', 'RG', 'K', 'CS', 'SC', 'SCN']);
// Real pages save some dozen states within one another, careless ones some hundred.
const DEEPEST_STATES = 1000;

// Strings are kept until the operator that shows them.
const HELD = 4;

const LINE_FEED = 10;

interface State {
  font: FontChoice | null;
  /** Names of the patterns that are painted with. */
  fill: string | null;
  stroke: string | null;
}

/** What stands before an operator: where it begins, its last name, and its strings. */
interface Operands {
  start: number;
  name: Token | null;
  strings: Token[];
}

const NONE: Operands = { start: -1, name: null, strings: [] };

function stringOf(bytes: Uint8Array, token: Token): string {
  const text = tokenText(bytes, token);
  return token.kind === 'hex' ? hexValue(text) : stringValue(text);
}

// The pieces that are kept, written one after another in what the whole needs at most.
class Kept {
  readonly #given: Uint8Array;
  #bytes = new Uint8Array();
  #length = 0;
  #keptTo = 0;

  constructor(given: Uint8Array) {
    this.#given = given;
  }

  #put(bytes: Uint8Array): void {
    if (this.#bytes.length === 0) this.#bytes = new Uint8Array(this.#given.length);
    this.#bytes.set(bytes, this.#length);
    this.#length += bytes.length;
  }

  /** Replaces what stands between two places. Nothing that is put in is longer than what it is put in for. */
  replace(start: number, end: number, bytes: Uint8Array): void {
    if (bytes.length > Math.max(1, end - start)) throw damaged(fault('picture-ends-early'));
    this.#put(this.#given.subarray(this.#keptTo, start));
    this.#put(bytes);
    this.#keptTo = end;
  }

  taken(): Uint8Array {
    if (this.#keptTo === 0) return this.#given;
    this.replace(this.#given.length, this.#given.length, new Uint8Array());
    return this.#bytes.subarray(0, this.#length);
  }
}

/** Follows the operators of a content stream, and keeps what of it is kept. */
class Cleaning {
  readonly found = { usesCmyk: false, usesLzw: false, usesUnknown: false, operators: 0, pixels: 0 };
  readonly kept: Kept;
  readonly #bytes: Uint8Array;
  readonly #budget: Budget;
  readonly #watcher: ContentWatcher;
  readonly #saved: State[] = [];
  #state: State = { font: null, fill: null, stroke: null };
  #operands: Operands = NONE;

  constructor(bytes: Uint8Array, budget: Budget, watcher: ContentWatcher) {
    this.kept = new Kept(bytes);
    this.#bytes = bytes;
    this.#budget = budget;
    this.#watcher = watcher;
  }

  operand(token: Token): void {
    if (this.#operands.start < 0) this.#operands = { start: token.start, name: null, strings: [] };
    if (token.kind === 'string' || token.kind === 'hex') this.#operands.strings.push(token);
    if (token.kind === 'name') this.#operands.name = token;
  }

  /** Takes an operator, and gives the place after it. */
  operator(token: Token, text: string): number {
    this.found.operators += 1;
    let after = token.end;
    if (MARKS.has(text)) {
      const { start } = this.#operands;
      this.kept.replace(start < 0 ? token.start : start, token.end, Uint8Array.of(LINE_FEED));
    } else if (text === 'BI') after = this.#inlineImage(token.end);
    else if (OPERATORS.has(text)) this.#follow(text);
    else this.found.usesUnknown = true;
    this.#operands = NONE;
    return after;
  }

  #inlineImage(from: number): number {
    const { end, replaced, pixels, usesCmyk, usesLzw } = cleanInlineImage(this.#bytes, from, this.#budget);
    if (replaced) this.kept.replace(replaced.start, replaced.end, replaced.bytes);
    this.found.usesCmyk ||= usesCmyk;
    this.found.usesLzw ||= usesLzw;
    this.found.pixels += pixels;
    return end;
  }

  #name(): string {
    const { name } = this.#operands;
    return name ? nameValue(tokenText(this.#bytes, name)) : '';
  }

  #follow(operator: string): void {
    const { fill, stroke } = this.#state;
    if (fill !== null && FILLING.has(operator)) this.#watcher.paints(fill);
    if (stroke !== null && STROKING.has(operator)) this.#watcher.paints(stroke);
    if (SHOWING.has(operator)) this.#show();
    else if (operator === 'q') this.#save();
    else if (operator === 'Q') this.#state = this.#saved.pop() ?? this.#state;
    else if (operator === 'Tf') this.#state = { ...this.#state, font: { kind: 'font', name: this.#name() } };
    else if (operator === 'gs') this.#setState();
    else if (operator === 'Do') this.#watcher.draws(this.#name());
    else if (FILL_COLOURS.has(operator)) this.#colour(operator, 'fill');
    else if (STROKE_COLOURS.has(operator)) this.#colour(operator, 'stroke');
  }

  #show(): void {
    for (const string of this.#operands.strings) this.#watcher.shows(this.#state.font, stringOf(this.#bytes, string));
  }

  #save(): void {
    if (this.#saved.length === DEEPEST_STATES) throw damaged(fault('objects-nested-too-deeply'));
    this.#saved.push(this.#state);
  }

  #setState(): void {
    const name = this.#name();
    if (this.#watcher.sets(name)) this.#state = { ...this.#state, font: { kind: 'state', name } };
  }

  #colour(operator: string, which: 'fill' | 'stroke'): void {
    const isPattern = operator.toLowerCase() === 'scn' && this.#operands.name !== null;
    this.found.usesCmyk ||= operator.toLowerCase() === 'k';
    this.found.usesCmyk ||= operator.toLowerCase() === 'cs' && this.#name() === 'DeviceCMYK';
    this.#state = { ...this.#state, [which]: isPattern ? this.#name() : null };
  }
}

/**
 * Removes the marked-content operators of a content stream with their operands, and what a camera wrote into pictures within it; leaves
 * every other byte as it is. The structure that the marks spoke of stays behind in the other file; left in, they would be taken for marks of
 * ours.
 *
 * @param watcher is told what is drawn and shown, in order
 */
export function cleanContent(bytes: Uint8Array, budget: Budget, watcher: ContentWatcher = UNWATCHED): CleanContent {
  const cleaning = new Cleaning(bytes, budget, watcher);
  for (let at = 0; ; ) {
    const token = tokenAt(bytes, at);
    spendUnit(budget, at, token.end, token.kind === 'string' || token.kind === 'hex' ? HELD : 1);
    if (token.kind === 'end') break;
    at = token.end;
    const isShort = token.kind === 'word' && token.end - token.start <= LONGEST_WORD;
    const text = isShort ? tokenText(bytes, token) : '';
    if (token.kind !== 'word' || OPERANDS.has(text)) cleaning.operand(token);
    else {
      at = cleaning.operator(token, text);
      spendBytes(budget, at - token.end);
    }
  }
  return { ...cleaning.found, bytes: cleaning.kept.taken() };
}
