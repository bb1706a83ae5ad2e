import { pictureName } from '../draw/draw-picture.ts';
import type { Annex } from '../import/index.ts';
import type { PictureSource } from '../measure/item.ts';
import { isStream } from '../pdf-object.ts';
import type { Picture } from '../picture/picture.ts';
import type { ObjectStore, StreamEntries } from './object-store.ts';
import { serialiseObject } from './serialise-object.ts';

function writeImage(picture: Picture, store: ObjectStore): string {
  const { colourSpace, bitsPerComponent, samples } = picture.image();
  const entries = {
    Type: '/XObject',
    Subtype: '/Image',
    Width: String(picture.columns),
    Height: String(picture.rows),
    ColorSpace: colourSpace,
    BitsPerComponent: String(bitsPerComponent),
  };
  const parameters = samples.parameters === '' ? {} : { DecodeParms: samples.parameters };
  return store.addPlainStream(samples.encoded, { ...entries, Filter: samples.filter, ...parameters });
}

// Writes all objects of an annex, and returns their new references.
function writeAnnex({ objects }: Annex, store: ObjectStore): ReadonlyMap<number, string> {
  const references = new Map([...objects.keys()].map((number) => [number, store.reserve()]));
  const referenceTo = (number: number): string => references.get(number) ?? 'null';
  for (const [number, object] of objects) {
    const reference = referenceTo(number);
    if (!isStream(object)) {
      store.put(reference, serialiseObject(object, referenceTo));
      continue;
    }
    const entries: StreamEntries = Object.fromEntries(
      [...object.dictionary].map(([key, value]) => [key, serialiseObject(value, referenceTo)]),
    );
    store.putStream(reference, object.bytes, entries);
  }
  return references;
}

/** Writes each picture once, however often it is shown, and returns the resource entry of each page. */
export function writePictures(pictures: readonly (readonly PictureSource[])[], store: ObjectStore): string[] {
  const images = new Map<Picture, string>();
  const annexes = new Map<Annex, ReadonlyMap<number, string>>();
  const referenceOf = (source: PictureSource): string => {
    if (source.kind === 'image') {
      const reference = images.get(source.picture) ?? writeImage(source.picture, store);
      images.set(source.picture, reference);
      return reference;
    }
    const references = annexes.get(source.annex) ?? writeAnnex(source.annex, store);
    annexes.set(source.annex, references);
    return references.get(source.page.form.number) ?? 'null';
  };
  return pictures.map((onPage) => {
    const named = onPage.map((source, i) => `/${pictureName(i)} ${referenceOf(source)}`);
    return named.length === 0 ? '' : `/XObject<<${named.join('')}>>`;
  });
}
