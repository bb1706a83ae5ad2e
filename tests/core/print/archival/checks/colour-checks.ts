import { PDFArray, type PDFObject } from 'pdf-lib';
import type { Check } from '../check.ts';
import { contentOf, dictOf, get, isTrue, keysOf, listOf, nameOf, numberOf, unfollowed } from '../objects.ts';
import type { PdfFile } from '../pdf-file.ts';

const intentsOf = ({ catalogue }: PdfFile): (PDFObject | undefined)[] =>
  listOf(get(catalogue, 'OutputIntents')).filter((intent) => nameOf(get(intent, 'S')) === 'GTS_PDFA1');

// Offsets of the header: ICC.1:2004-10, 7.2.
function profileDefects(profile: PDFObject | undefined): string[] {
  const bytes = Buffer.from(contentOf(profile) ?? []);
  if (bytes.length < 128) return ['there is no profile'];
  const said = { size: bytes.readUInt32BE(0), version: bytes[8] ?? 0, signature: bytes.toString('latin1', 36, 40) };
  const [deviceClass, space] = [bytes.toString('latin1', 12, 16), bytes.toString('latin1', 16, 20)];
  return [
    ...(said.size === bytes.length ? [] : [`the profile says ${said.size} bytes and has ${bytes.length}`]),
    ...(said.version <= 4 ? [] : [`the profile is of version ${said.version}`]),
    ...(said.signature === 'acsp' ? [] : ['the profile has no signature']),
    ...(['mntr', 'prtr'].includes(deviceClass) ? [] : [`the profile is of class ${deviceClass}`]),
    ...(space === 'RGB ' && numberOf(get(profile, 'N')) === 3 ? [] : [`N does not fit the colour space ${space}`]),
  ];
}

// An RGB intent covers DeviceRGB and DeviceGray. Named spaces are set by cs and CS: ours sets none.
const UNCOVERED = ['k', 'K', 'cs', 'CS', 'sc', 'SC', 'scn', 'SCN', 'sh', 'ri'];
const COVERED = ['DeviceRGB', 'DeviceGray', 'ICCBased', 'Indexed'];

function colourDefects({ pages, objects }: PdfFile): string[] {
  const used = pages.flatMap(({ content }, page) =>
    UNCOVERED.filter((operator) => content.operators.has(operator)).map(
      (operator) => `page ${page + 1} uses ${operator}`,
    ),
  );
  const images = objects.filter(
    (object) => nameOf(get(object, 'Subtype')) === 'Image' && !isTrue(get(object, 'ImageMask')),
  );
  const spaces = images.map((image) => nameOf(unfollowed(get(image, 'ColorSpace'))[0]) ?? 'none');
  return [...used, ...spaces.filter((space) => !COVERED.includes(space)).map((space) => `an image is in ${space}`)];
}

// An object with all that it leads to, as text.
function written(object: PDFObject | undefined): string {
  const dict = dictOf(object);
  if (dict) {
    const entries = keysOf(dict).map((key) => `${key} ${written(get(dict, key))}`);
    return `<<${entries.sort().join(' ')}>>${Buffer.from(contentOf(object) ?? []).toString('latin1')}`;
  }
  return object instanceof PDFArray ? `[${listOf(object).map(written).join(' ')}]` : String(object);
}

function inkDefects({ objects }: PdfFile): string[] {
  const mixtures = new Map<string, Set<string>>();
  for (const object of objects) {
    const [kind, ink, alternate, tint] = listOf(object);
    if (nameOf(kind) !== 'Separation') continue;
    const name = nameOf(ink) ?? '';
    mixtures.set(name, (mixtures.get(name) ?? new Set()).add(`${written(alternate)} ${written(tint)}`));
  }
  return [...mixtures].filter(([, ways]) => ways.size > 1).map(([ink]) => `${ink} is mixed in several ways`);
}

function isOpaque(object: PDFObject): boolean {
  if (nameOf(get(object, 'S')) === 'Transparency') return false;
  const mask = get(object, 'SMask');
  if (mask !== undefined && nameOf(mask) !== 'None') return false;
  if (!keysOf(object).some((key) => ['CA', 'ca', 'BM'].includes(key))) return true;
  const modes = unfollowed(get(object, 'BM')).map(nameOf);
  return (
    (numberOf(get(object, 'CA')) ?? 1) === 1 &&
    (numberOf(get(object, 'ca')) ?? 1) === 1 &&
    modes.every((mode) => mode === 'Normal' || mode === 'Compatible')
  );
}

export const COLOUR_CHECKS: readonly Check[] = [
  {
    name: 'output intent',
    clause: 'A-3 6.2.3',
    defects: (file) => (intentsOf(file).length === 1 ? [] : [`${intentsOf(file).length} output intents of GTS_PDFA1`]),
  },
  {
    name: 'colour profile',
    clause: 'A-3 6.2.3',
    defects: (file) => intentsOf(file).flatMap((intent) => profileDefects(get(intent, 'DestOutputProfile'))),
  },
  { name: 'colours that the intent covers', clause: 'A-3 6.2.4.3', defects: colourDefects },
  { name: 'inks of one name are alike', clause: 'A-3 6.2.4.4', defects: inkDefects },
  {
    name: 'no transparency',
    clause: 'A-3 6.2.10, stricter',
    defects: ({ objects }) =>
      objects
        .filter((object) => !isOpaque(object))
        .map((object) => `an object is transparent: ${keysOf(object).join(' ')}`),
  },
  {
    name: 'images',
    clause: 'A-3 6.2.8',
    defects: ({ objects }) =>
      objects
        .filter((object) => nameOf(get(object, 'Subtype')) === 'Image')
        .filter(
          (image) =>
            isTrue(get(image, 'Interpolate')) || keysOf(image).some((key) => ['Alternates', 'OPI'].includes(key)),
        )
        .map(() => 'an image is interpolated or has alternates'),
  },
];
