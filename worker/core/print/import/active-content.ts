import { type Fault, fault } from '../../text/faults.ts';
import {
  dictionaryOf,
  isArray,
  isDictionary,
  isStream,
  nameOf,
  type PdfDictionary,
  type PdfObject,
} from '../pdf-object.ts';
import { RefusedError } from '../refusal.ts';
import type { PdfFile } from './pdf-file.ts';

// Entries that make a file do something, or carry another file within it, whatever object they stand in.
const KEYS: ReadonlyMap<string, Fault> = new Map([
  ['JS', fault('holds-scripts')],
  ['JavaScript', fault('holds-scripts')],
  ['AA', fault('holds-actions-own')],
  ['XFA', fault('holds-form-program')],
  ['EmbeddedFiles', fault('holds-other-files-within')],
  ['EF', fault('holds-other-files-within')],
  ['Collection', fault('holds-other-files-within')],
  ['RichMediaContent', fault('holds-film-sound')],
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

const ANNOTATIONS: ReadonlyMap<string, Fault> = new Map([
  ['RichMedia', fault('holds-film-sound')],
  ['Screen', fault('holds-film-sound')],
  ['Movie', fault('holds-film-sound')],
  ['Sound', fault('holds-film-sound')],
  ['3D', fault('holds-film-sound')],
  ['FileAttachment', fault('holds-other-files-within')],
]);

const scripted = (what: Fault): RefusedError => new RefusedError('scripted', what);

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
  if (type !== 'StructElem' && ACTIONS.has(nameOf(dictionary.get('S')))) throw scripted(fault('holds-actions-own'));
  const annotation = ANNOTATIONS.get(nameOf(dictionary.get('Subtype')));
  if (annotation && dictionary.has('Rect')) throw scripted(annotation);
  if (type === 'EmbeddedFile') throw scripted(fault('holds-other-files-within'));
}

/**
 * Refuses a file that does things when it is opened, carries other files, or looks different from one viewer to the next. All objects are
 * looked at, those that nothing leads to as well.
 */
export function refuseForbidden(file: PdfFile, catalogue: PdfDictionary): void {
  for (const number of file.numbers) refuseIn(file.resolve({ kind: 'reference', number }));
  const opening = file.resolve(catalogue.get('OpenAction'));
  if (isDictionary(opening) && nameOf(file.resolve(opening.get('S'))) !== 'GoTo')
    throw scripted(fault('holds-actions-own'));
  const layers = dictionaryOf(file.resolve(dictionaryOf(file.resolve(catalogue.get('OCProperties'))).get('D')));
  const hidden = file.resolve(layers.get('OFF'));
  if ((isArray(hidden) && hidden.length > 0) || nameOf(layers.get('BaseState')) === 'OFF')
    throw scripted(fault('holds-layers-switched-off-so-what'));
}
