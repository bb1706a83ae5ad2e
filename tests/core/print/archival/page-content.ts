import type { PDFDict, PDFObject } from 'pdf-lib';
import { contentOf, dictOf, get, nameOf } from './objects.ts';
import type { Operand } from './operand-reader.ts';
import { type Operation, operationsIn } from './operations.ts';

/** A marked content sequence: `id` of one that belongs to the structure tree, `within` the tags around it. */
export interface Mark {
  tag: string;
  id: number | undefined;
  within: readonly string[];
}

/** Codes of two bytes that were shown in a font. */
export interface Shown {
  font: PDFDict | undefined;
  fontName: string;
  codes: readonly number[];
  isVisible: boolean;
}

/** What a page's content streams do, forms that they show included. */
export interface PageContent {
  marks: Mark[];
  shown: Shown[];
  operators: Set<string>;
  /** Painting operators outside any mark. */
  unmarked: string[];
  /** What does not open and close in pairs. */
  unbalanced: string[];
  /** Deepest nesting of saved graphics states. */
  deepest: number;
  /** Names that no resource has. */
  missing: string[];
}

const PAINTING = new Set('S s f F f* B B* b b* sh Tj TJ \' " Do EI'.split(' '));

const isName = (operand: Operand | undefined): operand is { name: string } =>
  typeof operand === 'object' && operand !== null && 'name' in operand;

function codesOf(operands: readonly Operand[]): number[] {
  return operands.flatMap((operand): number[] => {
    if (Array.isArray(operand)) return codesOf(operand);
    if (typeof operand !== 'object' || operand === null || !('bytes' in operand)) return [];
    const { bytes } = operand;
    return Array.from(
      { length: Math.floor(bytes.length / 2) },
      (_, i) => (bytes.charCodeAt(2 * i) << 8) | bytes.charCodeAt(2 * i + 1),
    );
  });
}

const latin1 = (bytes: Uint8Array | undefined): string => Buffer.from(bytes ?? []).toString('latin1');

// Text rendering mode 3 paints nothing (ISO 32000-1, table 106).
const INVISIBLE = 3;

/** Follows the content of a page. `streams` are its content streams, in order. */
export function readContent(
  streams: readonly (PDFObject | undefined)[],
  resources: PDFObject | undefined,
): PageContent {
  const seen: PageContent = {
    marks: [],
    shown: [],
    operators: new Set(),
    unmarked: [],
    unbalanced: [],
    deepest: 0,
    missing: [],
  };
  const operations = operationsIn(streams.map((stream) => latin1(contentOf(stream))).join('\n'));
  follow(operations, resources, [], seen);
  return seen;
}

/** Where the interpreter stands: what is open, and what is set. */
interface State {
  resources: PDFObject | undefined;
  /** Marks that were open before this stream began: a form stands in the marks of its page. */
  around: number;
  open: string[];
  saved: number;
  inText: boolean;
  fontName: string;
  mode: number;
}

type Step = (state: State, operands: readonly Operand[], seen: PageContent, operator: string) => void;

function resource(
  { resources }: State,
  kind: string,
  operand: Operand | undefined,
  seen: PageContent,
): PDFObject | undefined {
  const name = isName(operand) ? operand.name : '';
  const found = get(resources, kind, name);
  if (!found) seen.missing.push(`${kind} ${name}`);
  return found;
}

const begin: Step = ({ open }, [tag, properties], seen) => {
  const name = isName(tag) ? tag.name : '';
  const id = properties instanceof Map ? properties.get('MCID') : undefined;
  seen.marks.push({ tag: name, id: typeof id === 'number' ? id : undefined, within: [...open] });
  open.push(name);
};

const text: Step = (state, _operands, seen, operator) => {
  if (state.inText === (operator === 'BT')) seen.unbalanced.push(operator);
  state.inText = operator === 'BT';
};

const show: Step = (state, operands, seen) => {
  const font = dictOf(resource(state, 'Font', { name: state.fontName }, seen));
  seen.shown.push({ font, fontName: state.fontName, codes: codesOf(operands), isVisible: state.mode !== INVISIBLE });
};

const STEPS: Readonly<Record<string, Step>> = {
  q: (state, _operands, seen) => {
    seen.deepest = Math.max(seen.deepest, ++state.saved);
  },
  Q: (state, _operands, seen) => {
    if (--state.saved < 0) seen.unbalanced.push('Q');
  },
  BT: text,
  ET: text,
  BMC: begin,
  BDC: begin,
  EMC: ({ open, around }, _operands, seen) => {
    if (open.length === around) seen.unbalanced.push('EMC');
    else open.pop();
  },
  Tf: (state, [font]) => {
    if (isName(font)) state.fontName = font.name;
  },
  Tr: (state, [mode]) => {
    state.mode = Number(mode);
  },
  gs: (state, [name], seen) => {
    resource(state, 'ExtGState', name, seen);
  },
  Do: (state, [name], seen) => {
    const shown = resource(state, 'XObject', name, seen);
    if (nameOf(get(shown, 'Subtype')) !== 'Form') return;
    follow(operationsIn(latin1(contentOf(shown))), get(shown, 'Resources'), state.open, seen);
  },
  Tj: show,
  TJ: show,
};

function follow(
  operations: readonly Operation[],
  resources: PDFObject | undefined,
  around: readonly string[],
  seen: PageContent,
): void {
  const state: State = {
    resources,
    around: around.length,
    open: [...around],
    saved: 0,
    inText: false,
    fontName: '',
    mode: 0,
  };
  for (const { operator, operands } of operations) {
    seen.operators.add(operator);
    if (PAINTING.has(operator) && state.open.length === 0) seen.unmarked.push(operator);
    STEPS[operator]?.(state, operands, seen, operator);
  }
  if (state.saved > 0) seen.unbalanced.push('q');
  if (state.inText) seen.unbalanced.push('BT');
  if (state.open.length > around.length) seen.unbalanced.push('BDC');
}
