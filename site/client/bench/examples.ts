import type { PageFiles } from '../core/protocol.ts';
import { element, there } from '../element.ts';

/** A record to start from, as the build lists it. */
export interface Example {
  /** Name of its file, without the ending. */
  name: string;
  title: string;
  /** The moment for which it is worked out. */
  at: string;
  /** Addresses of the files that it names. */
  files: readonly string[];
}

export interface Taker {
  take(text: string, given: { at: string; handedIn: PageFiles }): Promise<void>;
  /** A photograph or paper that a record names. */
  add(name: string, bytes: Uint8Array): Promise<void>;
}

/** Examples to choose from, and files that are chosen or dropped. */
export function startExamples(taker: Taker): void {
  const choice = there('example', HTMLSelectElement);
  const field = there('files', HTMLInputElement);
  const page = there('bench', HTMLElement);
  void fetch('/examples/index.json').then(async (answer) => {
    const examples = (await answer.json()) as Example[];
    for (const { name, title } of examples) choice.appendChild(element('option', { value: name }, title));
    choice.addEventListener('change', () => {
      const example = examples.find(({ name }) => name === choice.value);
      if (example) void takeExample(example, taker);
    });
  });
  const takeAll = (list: FileList | null | undefined): void => {
    for (const file of list ?? []) void takeFile(file, taker);
  };
  field.addEventListener('change', () => takeAll(field.files));
  page.addEventListener('dragover', (event) => event.preventDefault());
  page.addEventListener('drop', (event) => {
    event.preventDefault();
    takeAll((event as DragEvent).dataTransfer?.files);
  });
}

async function takeExample({ name, at, files }: Example, taker: Taker): Promise<void> {
  const fetched = files.map(async (path) => {
    return [path, new Uint8Array(await (await fetch(path)).arrayBuffer())] as const;
  });
  const handedIn = Object.fromEntries(await Promise.all(fetched));
  await taker.take(await (await fetch(`/examples/${name}.json`)).text(), { at, handedIn });
}

async function takeFile(file: File, taker: Taker): Promise<void> {
  if (/\.json$/i.test(file.name)) {
    await taker.take(await file.text(), { at: new Date().toISOString(), handedIn: {} });
    return;
  }
  await taker.add(file.name, new Uint8Array(await file.arrayBuffer()));
}
