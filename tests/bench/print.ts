// Node script: node tests/bench/print.ts
// Times the typesetter on ten documents with two tables of 35 rows and a drawing each. Says what this machine takes, judges nothing.
import { type PrintJob, print } from '../../worker/core/print/index.ts';
import { jobOf, paragraphs } from '../core/print/sample-job.ts';

const RUNS = 30;

const cells = Array.from({ length: 5 }, (_, i) => i + 1);
const rows = Array.from({ length: 35 }, (_, i) => {
  return `<tr><th scope="row">Item ${i}</th>${cells.map((n) => `<td class="num">${(i * n * 1.37).toFixed(2)}</td>`).join('')}</tr>`;
});
const heads = cells.map((n) => `<th scope="col">Reading ${n}</th>`).join('');
const table = `<table class="ruled"><caption>Readings</caption><thead><tr><th scope="col">Item</th>${heads}</tr></thead><tbody>${rows.join('')}</tbody></table>`;
const figure =
  '<figure><svg viewBox="0 0 400 120" role="img" aria-label="A plot"><polyline points="0,0 50,60 100,20 400,100" stroke="black" fill="none"/></svg><figcaption>Plot</figcaption></figure>';
const part = `<section><h2>Part</h2>${paragraphs(2)}${table}${figure}</section>`;
const documents: PrintJob['documents'] = Array.from({ length: 10 }, (_, i) => {
  return {
    id: `d${i}`,
    title: `Document ${i}`,
    html: `<article id="d${i}" lang="en"><h1>Document ${i}</h1>${part}${part}</article>`,
  };
});

const timesMs: number[] = [];
let pages = 0;
let kilobytes = 0;
for (let run = 0; run < RUNS; run++) {
  const startMs = performance.now();
  const printed = await print(jobOf('', { documents }));
  timesMs.push(performance.now() - startMs);
  pages = printed.pages;
  kilobytes = Math.round(printed.bytes.length / 1000);
}
const [coldMs = 0, ...warmMs] = timesMs;
const medianMs = warmMs.toSorted((a, b) => a - b)[Math.floor(warmMs.length / 2)] ?? 0;
process.stdout.write(
  `${pages} pages, ${kilobytes} kB: cold ${coldMs.toFixed(0)} ms, warm ${medianMs.toFixed(0)} ms (median)\n`,
);
