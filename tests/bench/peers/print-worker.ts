import { type PrintDocument, print } from '../../../worker/core/print/index.ts';
import { jobOf } from '../../core/print/sample-job.ts';
import { htmlDocuments } from './html-content.ts';

function photographs(names: readonly string[]): PrintDocument[] {
  if (names.length === 0) return [];
  const figures = names.map((name) => `<figure><img src="${name}" alt="${name}"></figure>`).join('');
  const html = `<article id="photographs" lang="en"><h1>Photographs</h1>${figures}</article>`;
  return [{ id: 'photographs', title: 'Photographs', html }];
}

/** A Worker for the bench alone: prints so many pages, and so many times the photograph that is posted to it, each as a file of its own. */
export default {
  async fetch(request: Request): Promise<Response> {
    const { searchParams } = new URL(request.url);
    const photograph = new Uint8Array(await request.arrayBuffer());
    const names = Array.from({ length: Number(searchParams.get('photographs')) }, (_, i) => `photograph-${i + 1}`);
    const images = Object.fromEntries(names.map((name) => [name, photograph.slice()]));
    const documents = [...htmlDocuments(Number(searchParams.get('pages'))), ...photographs(names)];
    const { bytes } = await print(jobOf('', { documents, images }));
    return new Response(bytes as BodyInit);
  },
};
