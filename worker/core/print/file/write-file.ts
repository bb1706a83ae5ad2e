import type { Drawn } from '../draw/draw-pages.ts';
import { number, textString } from '../draw/pdf-text.ts';
import type { Paper } from '../paper.ts';
import type { Part, Printed, PrintJob } from '../print-job.ts';
import { colourProfile } from './colour-profile.ts';
import { informationDictionary, xmpPacket } from './metadata.ts';
import { createObjectStore, type ObjectStore } from './object-store.ts';
import type { StreamPlace } from './serialise-file.ts';
import { type NamedStreams, writeAttachments } from './write-attachments.ts';
import { writeFonts } from './write-fonts.ts';
import { type WrittenLink, writeLinks } from './write-links.ts';
import { writeOutline } from './write-outline.ts';
import { writePictures } from './write-pictures.ts';
import { writeStructure } from './write-structure.ts';

/** Data for writing pages: the objects of the file, the references reserved for them, and the named streams. */
interface PagesToWrite {
  pages: readonly string[];
  links: readonly WrittenLink[];
  store: ObjectStore;
  named: NamedStreams;
}

function writePages(drawn: Drawn, paper: Paper, { pages, links, store, named }: PagesToWrite): string {
  const tree = store.reserve();
  const fonts = writeFonts(store);
  const resources = store.add(`<</Font${fonts}/ProcSet[/PDF/Text]>>`);
  const pictures = writePictures(drawn.pictures, store);
  const box = `[0 0 ${number(paper.widthPt)} ${number(paper.heightPt)}]`;
  drawn.contents.forEach((content, page) => {
    const annotations = links.filter((link) => link.page === page).map((link) => link.reference);
    const annots = annotations.length > 0 ? `/Annots[${annotations.join(' ')}]` : '';
    const stream = store.addStream(content);
    named.parts.set(stream, `page ${page + 1}`);
    const shown = pictures[page] ?? '';
    const own = shown === '' ? resources : `<</Font${fonts}${shown}>>`;
    store.put(
      pages[page] ?? '',
      `<</Type/Page/Parent ${tree}/MediaBox${box}/Resources ${own}/Contents ${stream}` +
        `/StructParents ${page}/Tabs/S${annots}>>`,
    );
  });
  store.put(tree, `<</Type/Pages/Count ${pages.length}/Kids[${pages.join(' ')}]>>`);
  return tree;
}

function writeOutputIntent(store: ObjectStore): string {
  const profile = store.addStream(colourProfile(), { N: '3' });
  return `/OutputIntents[<</Type/OutputIntent/S/GTS_PDFA1/OutputConditionIdentifier(sRGB)/Info(sRGB, IEC 61966-2-1)/DestOutputProfile ${profile}>>]`;
}

/**
 * Writes the file: PDF 1.7 with the structure of PDF/A-3a (ISO 19005-3) and PDF/UA-1 (ISO 14289-1), and the claims to
 * them if they are met.
 *
 * The same job gives the same bytes: no clock, no randomness.
 */
export function writeFile(
  drawn: Drawn,
  paper: Paper,
  job: PrintJob,
  claims: boolean,
): Pick<Printed, 'bytes' | 'parts' | 'plain'> {
  const { metadata, attachments } = job;
  if (!/^[0-9a-f]{32}$/i.test(metadata.identifier)) {
    throw new Error(
      `Cannot print: identifier must be 32 hexadecimal digits: current value is "${metadata.identifier}"`,
    );
  }
  const store = createObjectStore();
  const named: NamedStreams = { parts: new Map(), plain: new Map() };
  const catalogue = store.reserve();
  const pages = drawn.contents.map(() => store.reserve());
  const links = writeLinks(drawn, pages, store);
  const tree = writePages(drawn, paper, { pages, links, store, named });
  const structure = writeStructure(drawn.structure, links, pages, store);
  const outline = writeOutline(drawn.bookmarks, pages, store);
  const attached = writeAttachments(attachments, pages.length, metadata.issuedAt, store, named);
  const packet = new TextEncoder().encode(xmpPacket(metadata, claims));
  const description = store.addPlainStream(packet, { Type: '/Metadata', Subtype: '/XML' });
  store.put(
    catalogue,
    `<</Type/Catalog/Version/1.7/Pages ${tree}/Lang${textString(metadata.language)}/MarkInfo<</Marked true>>` +
      `/ViewerPreferences<</DisplayDocTitle true>>/StructTreeRoot ${structure}/Metadata ${description}${outline}` +
      `/PageLabels<</Nums[0<</S/D>>]>>/Names<<${attached.names}>>${attached.catalogue}${writeOutputIntent(store)}>>`,
  );
  const { bytes, placeOf } = store.save(catalogue, store.add(informationDictionary(metadata)), metadata.identifier);
  const stretches = (names: ReadonlyMap<string, string>, of: (place: StreamPlace) => Omit<Part, 'name'>): Part[] =>
    [...names].flatMap(([reference, name]) => {
      const place = placeOf(reference);
      if (!place) return [];
      const { start, end } = of(place);
      return [{ name, start, end }];
    });
  return {
    bytes,
    parts: stretches(named.parts, (place) => place),
    plain: stretches(named.plain, ({ contents }) => contents),
  };
}
