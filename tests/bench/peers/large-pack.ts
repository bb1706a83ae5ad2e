// Node script, started by in-little-memory.ts with a bounded heap: a pack as large as the schema allows, with photographs and a paper. Prints one line of JSON.
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type AttachmentFact, assess, draftPdf } from '../../../worker/core/core.ts';
import { print } from '../../../worker/core/print/index.ts';
import { ROOT } from '../../../worker/local/service/places.ts';
import { jobOf } from '../../core/print/sample-job.ts';
import { enlarged } from '../enlarged.ts';
import { htmlDocuments } from './html-content.ts';
import { noisePicture } from './noise-picture.ts';

const AT = '2026-11-05T14:20:00+01:00';
const [PHOTOGRAPHS, TIMES, PAPER_PAGES] = [20, 20, 59];

const files: Record<string, Uint8Array> = {};
const facts: Record<string, AttachmentFact> = {};
const attachments: object[] = [];

function attach(id: string, kind: 'photograph' | 'paper', bytes: Uint8Array, fact: AttachmentFact): void {
  const sha256 = createHash('sha256').update(bytes).digest('hex');
  files[sha256] = bytes;
  facts[sha256] = fact;
  attachments.push({ id, kind, title: `Attachment ${id}`, sha256 });
}

for (let index = 0; index < PHOTOGRAPHS; index++) {
  const bytes = new Uint8Array(noisePicture(400, 300 + index));
  const fact = { ok: true, kind: 'png', bytes: bytes.length, widthPx: 400, heightPx: 300 + index } as const;
  attach(`A${index}`, 'photograph', bytes, fact);
}
const paper = (await print(jobOf('', { documents: htmlDocuments(PAPER_PAGES) }))).bytes;
attach('P1', 'paper', paper, { ok: true, kind: 'pdf', bytes: paper.length, pages: PAPER_PAGES, obstacles: [] });

const full = JSON.parse(readFileSync(join(ROOT, 'fixtures/visits/nose-wheel-full.json'), 'utf8'));
const record = Object.assign({}, enlarged(full, TIMES), { attachments });
(globalThis as { gc?: () => void }).gc?.();
const before = process.memoryUsage();
const outcome = await assess(record, AT, { attachments: facts });
if (!outcome.ok) throw new Error(outcome.issues[0]?.sentence);
const { bytes } = await draftPdf(outcome.assessed, AT, { files });
const { arrayBuffers } = process.memoryUsage();
process.stdout.write(
  `${JSON.stringify({ megabytes: bytes.length / 1e6, heapBeforeMb: before.heapUsed / 1e6, buffersMb: arrayBuffers / 1e6 })}\n`,
);
