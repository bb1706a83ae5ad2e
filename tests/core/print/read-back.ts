import { getDocument, type PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A node of a page's structure tree, as an outside reader sees it. */
export interface ReadNode {
  role: string;
  alt?: string;
  children: ReadNode[];
  /** Marked contents of the node itself. */
  contents: number;
}

interface RawNode {
  role?: string;
  alt?: string;
  children?: RawNode[];
}

// Faxes are unpacked by a module of its own.
const MODULES = `${import.meta.dirname}/../../../node_modules/pdfjs-dist/wasm/`;

/** Opens a file with a reader that shares no code with the writer. */
export function openFile(bytes: Uint8Array): Promise<PDFDocumentProxy> {
  return getDocument({ data: bytes.slice(), verbosity: 0, useSystemFonts: false, wasmUrl: MODULES }).promise;
}

/** The text of each page, pieces in the order of the content stream, lines parted by line feeds. */
export async function pageTexts(bytes: Uint8Array): Promise<string[]> {
  const file = await openFile(bytes);
  const texts: string[] = [];
  for (let page = 1; page <= file.numPages; page++) {
    const content = await (await file.getPage(page)).getTextContent();
    texts.push(content.items.map((item) => ('str' in item ? item.str + (item.hasEOL ? '\n' : '') : '')).join(''));
  }
  return texts;
}

function toNode(raw: RawNode): ReadNode {
  const children = raw.children ?? [];
  return {
    role: raw.role ?? '',
    ...(raw.alt === undefined ? {} : { alt: raw.alt }),
    children: children.filter((child) => child.role !== undefined).map(toNode),
    contents: children.filter((child) => child.role === undefined).length,
  };
}

/** The structure tree of a page, counted from 1. */
export async function structureOf(bytes: Uint8Array, page: number): Promise<ReadNode> {
  const tree = await (await (await openFile(bytes)).getPage(page)).getStructTree();
  return toNode(tree as RawNode);
}

/** All nodes of a role in a tree. */
export function nodesOf(tree: ReadNode, role: string): ReadNode[] {
  const below = tree.children.flatMap((child) => nodesOf(child, role));
  return tree.role === role ? [tree, ...below] : below;
}
