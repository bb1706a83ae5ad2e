import { phrase } from '../../words/words.ts';
import { RefusedError } from '../refusal.ts';
import type { PdfFile } from './pdf-file.ts';
import {
  dictionaryOf,
  isArray,
  isDictionary,
  isStream,
  nameOf,
  type PdfDictionary,
  type PdfObject,
} from './pdf-object.ts';

// Entries that make a file do something, or carry another file within it, whatever object they stand in.
const KEYS: ReadonlyMap<string, string> = new Map([
  ['JS', phrase`it holds scripts`],
  ['JavaScript', phrase`it holds scripts`],
  ['AA', phrase`it holds actions of its own`],
  ['XFA', phrase`it holds a form that is a program`],
  ['EmbeddedFiles', phrase`it holds other files within it`],
  ['EF', phrase`it holds other files within it`],
  ['Collection', phrase`it holds other files within it`],
  ['RichMediaContent', phrase`it holds film or sound`],
]);

// ISO 32000-1, table 198: what acts on more than the view.
const ACTIONS = new Set([
  'JavaScript',
  'Launch',
  'SubmitForm',
  'ImportData',
  'Rendition',
  'Movie',
  'Sound',
  'GoToE',
  'RichMediaExecute',
]);

const ANNOTATIONS: ReadonlyMap<string, string> = new Map([
  ['RichMedia', phrase`it holds film or sound`],
  ['Screen', phrase`it holds film or sound`],
  ['Movie', phrase`it holds film or sound`],
  ['Sound', phrase`it holds film or sound`],
  ['3D', phrase`it holds film or sound`],
  ['FileAttachment', phrase`it holds other files within it`],
]);

const scripted = (sentence: string): RefusedError => new RefusedError('scripted', sentence);

function refuseIn(object: PdfObject): void {
  if (isArray(object)) object.forEach(refuseIn);
  if (!isDictionary(object) && !isStream(object)) return;
  const dictionary = dictionaryOf(object);
  for (const [key, value] of dictionary) {
    const forbidden = KEYS.get(key);
    if (forbidden) throw scripted(forbidden);
    refuseIn(value);
  }
  const type = nameOf(dictionary.get('Type'));
  // Structure elements have an entry of the same name, and may be called anything.
  if (type !== 'StructElem' && ACTIONS.has(nameOf(dictionary.get('S'))))
    throw scripted(phrase`it holds actions of its own`);
  const annotation = ANNOTATIONS.get(nameOf(dictionary.get('Subtype')));
  if (annotation && dictionary.has('Rect')) throw scripted(annotation);
  if (type === 'EmbeddedFile') throw scripted(phrase`it holds other files within it`);
}

/**
 * Refuses a file that does things when it is opened, carries other files, or looks different from one viewer to the next. All objects are
 * looked at, those that nothing leads to as well.
 */
export function refuseForbidden(file: PdfFile, catalogue: PdfDictionary): void {
  for (const number of file.numbers) refuseIn(file.resolve({ kind: 'reference', number }));
  const opening = file.resolve(catalogue.get('OpenAction'));
  if (isDictionary(opening) && nameOf(file.resolve(opening.get('S'))) !== 'GoTo')
    throw scripted(phrase`it holds actions of its own`);
  const layers = dictionaryOf(file.resolve(dictionaryOf(file.resolve(catalogue.get('OCProperties'))).get('D')));
  const hidden = file.resolve(layers.get('OFF'));
  if ((isArray(hidden) && hidden.length > 0) || nameOf(layers.get('BaseState')) === 'OFF')
    throw scripted(phrase`it holds layers that are switched off, so that what is seen depends on the viewer`);
}
