import type { PrintJob } from '../../../worker/core/print/index.ts';

/** A job of one document that holds the given HTML, with parts of the job replaced. */
export function jobOf(html: string, more: Partial<PrintJob> = {}): PrintJob {
  return {
    documents: [
      { id: 'one', title: 'Document one', html: `<article id="one" lang="en"><h1>One</h1>${html}</article>` },
    ],
    footer: { left: 'Q-SLM', centre: 'Pack Q-SLM-P3' },
    header: { left: 'Example Workshop', right: 'Visit 3' },
    paper: 'A4',
    metadata: {
      title: 'Pack Q-SLM-P3',
      subject: 'A visit',
      author: 'Example Workshop',
      language: 'en',
      issuedAt: '2026-03-14T15:09:26+01:00',
      identifier: '0123456789abcdef0123456789abcdef',
    },
    attachments: [],
    ...more,
  };
}

/** A table with a head and numbered rows. */
export function tableOf(rows: number, caption = 'Readings'): string {
  const body = Array.from({ length: rows }, (_, i) => {
    return `<tr><th scope="row">Row ${i + 1}</th><td class="num">${i}.5</td></tr>`;
  });
  return `<table class="ruled"><caption>${caption}</caption><thead><tr><th scope="col">Place</th><th scope="col" class="num">Mass</th></tr></thead><tbody>${body.join('')}</tbody></table>`;
}

/** So many paragraphs of three lines. */
export function paragraphs(count: number): string {
  const text = 'The instrument correction is applied before tare is taken off, and the sum is not rounded. '.repeat(3);
  return Array.from({ length: count }, (_, i) => `<p>${i + 1}. ${text}</p>`).join('');
}

/** So many paragraphs of one line: 35 fill a page below its heading. */
export function lines(count: number): string {
  return Array.from({ length: count }, (_, i) => `<p>Line ${i + 1}.</p>`).join('');
}
