import { sha256 } from '../../../worker/core/pack/digest.ts';
import { onChosenFiles, onDroppedFiles } from '../dropped-files.ts';
import { byId, element } from '../element.ts';
import type { PageFiles } from '../thread/protocol.ts';

/** Example record to start from, as the build lists it. */
export interface Example {
  /** File name without the ending. */
  name: string;
  title: string;
  /** Time at which the example is assessed. */
  at: string;
  /** Addresses of the files that the record names. */
  files: readonly string[];
}

export interface Taker {
  /** @param handedIn omitted for a record without files: the files already present are kept */
  take(text: string, given: { at: string; handedIn?: PageFiles }): Promise<void>;
  /** Adds a photograph or document that a record names. */
  add(handedIn: PageFiles): Promise<void>;
  /** Reports that nothing could be read. */
  failed(error: unknown): void;
}

/** Starts the choice of examples, and the reading of files that are chosen or dropped. */
export function startExamples(taker: Taker): void {
  const choice = byId('example', HTMLSelectElement);
  listExamples(choice, taker).catch(taker.failed);
  const takeAll = (files: FileList): void => {
    for (const file of files) takeFile(file, taker).catch(taker.failed);
  };
  onChosenFiles(byId('files', HTMLInputElement), takeAll);
  onDroppedFiles(takeAll);
}

async function listExamples(choice: HTMLSelectElement, taker: Taker): Promise<void> {
  const examples = (await (await fetch('/examples/index.json')).json()) as Example[];
  for (const { name, title } of examples) choice.appendChild(element('option', { value: name }, title));
  choice.addEventListener('change', () => {
    const example = examples.find(({ name }) => name === choice.value);
    if (example) takeExample(example, taker).catch(taker.failed);
  });
}

async function takeExample({ name, at, files }: Example, taker: Taker): Promise<void> {
  const fetched = files.map(async (path) => {
    return byDigest(await (await fetch(path)).arrayBuffer());
  });
  const handedIn = Object.assign({}, ...(await Promise.all(fetched)));
  await taker.take(await (await fetch(`/examples/${name}.json`)).text(), { at, handedIn });
}

async function takeFile(file: File, taker: Taker): Promise<void> {
  if (/\.json$/i.test(file.name)) await taker.take(await file.text(), { at: new Date().toISOString() });
  else await taker.add(await byDigest(await file.arrayBuffer()));
}

async function byDigest(content: ArrayBuffer): Promise<PageFiles> {
  const bytes = new Uint8Array(content);
  return { [await sha256(bytes)]: bytes };
}
