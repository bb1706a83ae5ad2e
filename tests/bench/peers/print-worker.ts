import { print } from '../../../worker/print/index.ts';
import { jobOf } from '../../print/sample-job.ts';
import { htmlDocuments } from './html-content.ts';

/** A Worker for the bench alone: prints a document of so many pages. */
export default {
  async fetch(request: Request): Promise<Response> {
    const pages = Number(await request.text());
    const { bytes } = await print(jobOf('', { documents: htmlDocuments(pages) }));
    return new Response(new Uint8Array(bytes));
  },
};
