import { type PDFDict, PDFDocument, PDFName, type PDFObject, PDFRawStream, PDFRef } from 'pdf-lib';
import { contentOf, dictOf, get, getUnfollowed, nameOf } from '../objects.ts';

/** What pdf-lib makes objects of: a string becomes a name. */
type Plain = PDFObject | string | number | boolean | null | readonly Plain[] | { readonly [key: string]: Plain };

/** A good file that is about to be spoilt. */
export interface Draft {
  document: PDFDocument;
  /** The first structure element of a role that meets a condition. */
  element: (role: string, isWanted?: (element: PDFDict) => boolean) => PDFDict;
  /** The first dictionary, or dictionary of a stream, that has a key. */
  having: (key: string) => PDFDict;
  /** Sets a key to what is written as a plain value: `{ S: 'Name' }` and the like. */
  set: (dict: PDFObject | undefined, key: string, value: Plain) => void;
  drop: (dict: PDFObject | undefined, key: string) => void;
  /** Rewrites the stream that a key names, keeping its dictionary; it is no longer deflated. */
  rewrite: (dict: PDFObject | undefined, key: string, change: (content: Buffer) => Uint8Array | string) => void;
  /** Rewrites the content of the first page. */
  draw: (change: (content: string) => string) => void;
  /** Adds an element without content below another. */
  graft: (parent: PDFDict, role: string, kids?: PDFRef[]) => PDFRef;
}

/** A way to spoil a good file that one check, and no other, must catch. */
export interface Defect {
  /** The name of the check. */
  check: string;
  /** What is wrong, for the title of the test; needed where one check has several. */
  what?: string;
  spoil?: (draft: Draft) => void;
  /** Done to the bytes, after all else. */
  spoilBytes?: (bytes: Buffer) => Uint8Array;
}

export const name = (text: string): PDFName => PDFName.of(text);

function draftOf(document: PDFDocument): Draft {
  const { context } = document;
  const dicts = context.enumerateIndirectObjects().flatMap(([ref, object]) => {
    const dict = dictOf(object);
    return dict ? [{ ref, dict }] : [];
  });
  const refOf = (wanted: PDFDict): PDFRef => {
    const found = dicts.find(({ dict }) => dict === wanted);
    if (!found) throw new Error('Cannot spoil the file: no such object');
    return found.ref;
  };
  const required = (dict: PDFDict | undefined, what: string): PDFDict => {
    if (!dict) throw new Error(`Cannot spoil the file: it has no ${what}`);
    return dict;
  };
  const set: Draft['set'] = (dict, key, value) =>
    dictOf(dict)?.set(name(key), context.obj(value as Record<string, PDFObject>));
  const rewrite: Draft['rewrite'] = (dict, key, change) => {
    const ref = getUnfollowed(dict, key);
    const stream = get(dict, key);
    if (!(ref instanceof PDFRef && stream instanceof PDFRawStream)) throw new Error(`Cannot spoil the file: ${key}`);
    const content = change(Buffer.from(contentOf(stream) ?? []));
    stream.dict.delete(name('Filter'));
    context.assign(
      ref,
      PDFRawStream.of(stream.dict, typeof content === 'string' ? Buffer.from(content, 'latin1') : content),
    );
  };
  return {
    document,
    element: (role, isWanted = () => true) =>
      required(
        dicts
          .map(({ dict }) => dict)
          .find((dict) => nameOf(get(dict, 'S')) === role && get(dict, 'P') && isWanted(dict)),
        role,
      ),
    having: (key) =>
      required(
        dicts.map(({ dict }) => dict).find((dict) => dict.has(name(key))),
        key,
      ),
    set,
    drop: (dict, key) => dictOf(dict)?.delete(name(key)),
    rewrite,
    draw: (change) => rewrite(document.getPage(0).node, 'Contents', (content) => change(content.toString('latin1'))),
    graft: (parent, role, kids = []) => {
      const grafted = context.register(context.obj({ S: role, P: refOf(parent), K: kids }));
      const before = getUnfollowed(parent, 'K');
      const held = before === undefined ? [] : dictOf(before) || before instanceof PDFRef ? [before] : undefined;
      if (held) parent.set(name('K'), context.obj([...held, grafted]));
      else (get(parent, 'K') as unknown as { push: (kid: PDFRef) => void }).push(grafted);
      return grafted;
    },
  };
}

/** A file with a defect. */
export async function spoilt(bytes: Uint8Array, { spoil, spoilBytes }: Defect): Promise<Uint8Array> {
  const document = await PDFDocument.load(bytes, { updateMetadata: false });
  spoil?.(draftOf(document));
  const saved = await document.save({ updateFieldAppearances: false });
  return spoilBytes ? spoilBytes(Buffer.from(saved)) : saved;
}
