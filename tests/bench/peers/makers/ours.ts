import { print } from '../../../../worker/core/print/index.ts';
import { jobOf } from '../../../core/print/sample-job.ts';
import { htmlDocuments } from '../html-content.ts';
import type { Maker } from '../maker.ts';

export const maker: Maker = {
  make: async (pages) => {
    const printed = await print(jobOf('', { documents: htmlDocuments(pages) }));
    if (printed.pages !== pages)
      throw new Error(`Cannot compare: ${pages} pages are wanted: current value is ${printed.pages}`);
    return printed.bytes;
  },
};
