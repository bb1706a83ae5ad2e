import { byId, element } from '../element.ts';
import type { PageFiles, Sheet } from '../thread/protocol.ts';

// Previews are part of the page, because the content policy forbids frames. Styles of documents apply within
// `.document`, so links, search and screen readers see one text. Only the editor has a shadow root, because the
// policy allows its styles there.

/** Preview of the documents of a record, one at a time. */
export interface Preview {
  /** Returns the identifier of the current document. */
  shown(): string;
  update(documents: Sheet['documents'], files: PageFiles): void;
  /** @param words scrolled to and marked, if the document has them */
  show(document: string, words?: string): void;
}

/** Opens the preview: each document as in the pack, marked as not released. */
export function openPreview(): Preview {
  const choice = byId('document', HTMLSelectElement);
  const frame = byId('preview', HTMLElement);
  let documents: Sheet['documents'] = [];
  let files: PageFiles = {};
  let drawn = '';
  const draw = async (): Promise<void> => {
    const shown = documents.find(({ id }) => id === choice.value);
    if (drawn !== choice.value) frame.scrollTop = 0;
    drawn = choice.value;
    const { content, pictures } = markupOf(shown?.html ?? '');
    frame.replaceChildren(...content);
    for (const picture of pictures) await fill(picture, files);
  };
  choice.addEventListener('change', () => void draw());
  frame.addEventListener('click', (event) => {
    const href = (event.target as Element).closest('a')?.getAttribute('href') ?? '';
    if (!href.startsWith('#')) return;
    event.preventDefault();
    if (documents.some(({ id }) => href === `#${id}`)) {
      choice.value = href.slice(1);
      void draw();
    } else frame.querySelector(href)?.scrollIntoView();
  });
  return {
    shown: () => choice.value,
    update(given, handedIn) {
      documents = given;
      files = handedIn;
      const before = choice.value;
      choice.replaceChildren(...documents.map(({ id, title }) => element('option', { value: id }, title)));
      choice.value = documents.some(({ id }) => id === before) ? before : (documents[0]?.id ?? '');
      choice.disabled = documents.length === 0;
      void draw();
    },
    show(document, words) {
      choice.value = document;
      void draw();
      const found = words === undefined ? undefined : within(frame, words);
      found?.classList.add('sought');
      (found ?? frame).scrollIntoView({ block: found ? 'center' : 'start' });
    },
  };
}

/**
 * Parses a document into elements of the page: references work, and screen readers and the page search see one text.
 * Tables and drawings are framed so that they scroll sideways. Templates escape everything from a record, so the markup
 * is ours only.
 */
function markupOf(html: string): { content: Node[]; pictures: HTMLImageElement[] } {
  // Nothing of a parsed document is fetched before it is part of the page.
  const { body } = new DOMParser().parseFromString(html, 'text/html');
  // The page may have an element with that id itself, such as its findings.
  body.querySelector('article')?.removeAttribute('id');
  for (const wide of body.querySelectorAll('table, svg')) {
    const scroll = element('div', { className: 'scroll', tabIndex: 0 });
    wide.replaceWith(scroll);
    scroll.appendChild(wide);
  }
  const pictures = [...body.querySelectorAll('img')];
  for (const picture of pictures) {
    picture.dataset.file = picture.getAttribute('src')?.split('/').at(-1) ?? '';
    picture.removeAttribute('src');
  }
  return { content: [...body.childNodes], pictures };
}

/** Returns the element that contains the words: a whole cell, else a part of a text. */
function within(frame: HTMLElement, words: string): Element | undefined {
  const lines = Array.from(frame.querySelectorAll('td, th, dd, dt, li, p, h2, h3')) as unknown as HTMLElement[];
  const said = (line: HTMLElement): string => line.textContent?.trim() ?? '';
  const line = lines.find((one) => said(one) === words) ?? lines.find((one) => said(one).includes(words));
  return line?.closest('tr') ?? line;
}

/** Fills in a picture from the files of the page; its caption if the file is missing. */
async function fill(picture: HTMLImageElement, files: PageFiles): Promise<void> {
  const bytes = files[picture.dataset.file ?? ''];
  if (bytes) picture.src = await dataUrl(bytes);
  else picture.replaceWith(element('p', {}, picture.alt));
}

function dataUrl(bytes: Uint8Array): Promise<string> {
  return new Promise((resolve) => {
    const reader = new FileReader();
    reader.addEventListener('load', () => resolve(String(reader.result)));
    reader.readAsDataURL(
      new Blob([bytes as Uint8Array<ArrayBuffer>], { type: bytes[0] === 0xff ? 'image/jpeg' : 'image/png' }),
    );
  });
}
