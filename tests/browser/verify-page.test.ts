import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { slipmark } from '../../worker/client/client.ts';
import { pdfOf, putDemo } from '../../worker/local/service/demo.ts';
import { exampleVisit } from '../../worker/local/service/example-visit.ts';
import type { Phone } from './phone.ts';
import { openSite, type Site } from './site.ts';

let site: Site;
let phone: Phone;
let pdf: Uint8Array;

beforeAll(async () => {
  site = await openSite(18_960);
  ({ phone } = site);
  const { service, secrets } = site;
  const demo = await putDemo(service.origin, secrets, () => undefined);
  pdf = new Uint8Array(await pdfOf(service.origin, demo));
}, 90_000);

afterAll(() => site?.close());

async function verdictOn(bytes: Uint8Array): Promise<string> {
  const { page } = phone;
  await page.goto(`${site.service.origin}/verify`);
  await page
    .locator('#file')
    .setInputFiles({ name: 'pack.pdf', mimeType: 'application/pdf', buffer: Buffer.from(bytes) });
  await page.locator('#verdict h2', { hasNotText: 'Working' }).waitFor();
  return (await page.locator('#verdict').textContent()) ?? '';
}

describe('the verify page on a phone', () => {
  test('fits the width and has no accessibility defect, before and after', async () => {
    phone.complaints.length = 0;
    await phone.page.goto(`${site.service.origin}/verify`);
    expect(await phone.defects()).toEqual([]);
    await verdictOn(pdf);
    expect(await phone.wrongAtAnySize()).toEqual([]);
    expect(phone.complaints).toEqual([]);
  });

  test('finds the demo pack genuine, and sends its digest alone', async () => {
    const bodies: string[] = [];
    phone.page.on('request', (request) => bodies.push(request.postData() ?? ''));
    expect(await verdictOn(pdf)).toMatch(/^Genuine/);
    const sent = bodies.filter((body) => body !== '');
    expect(sent).toHaveLength(1);
    expect(Object.keys(JSON.parse(sent[0] ?? ''))).toEqual(['pdfSha256']);
  });

  test('says which workshop sealed it, by the name that the archive knows, and with which key', async () => {
    const said = await verdictOn(pdf);
    expect(said).toContain('Sealed by Demo workshop (demo)');
    expect(said).toContain('released by Jonas Veldt');
    const published = await slipmark({ origin: site.service.origin }).getSealKeys({ workshop: 'demo' });
    expect(said).toContain(`Key: ${published.body.keys[0]?.kid}`);
  });

  test('tells the same record of another workshop from it', async () => {
    const deployment = slipmark({ origin: site.service.origin, key: site.secrets.adminSecret });
    const created = await deployment.createWorkshop({ body: { id: 'other', name: 'Another workshop' } });
    const client = slipmark({ origin: site.service.origin, key: created.body.key.secret });
    const visit = { registration: 'Q-SLM', visit: 'copied' };
    const { attachments: _, ...record } = exampleVisit('nose-wheel-full', new Date());
    await client.putVisit({ ...visit, body: record });
    const { etag } = await client.getAssessment(visit);
    await client.releaseVisit({ ...visit, ifMatch: etag, body: { by: 'jonas', knowsOfNoHazard: true } });
    const said = await verdictOn((await client.getPackPdf({ pack: 'Q-SLM-P1-1' })).body);
    expect(said).toContain('Sealed by Another workshop (other)');
    expect(said).not.toContain('Demo workshop');
  });

  test('tells an altered pack, and where', async () => {
    const altered = pdf.slice();
    const text = new TextDecoder('latin1').decode(pdf);
    const at = text.indexOf('<dc:format>') + 20;
    altered[at] = (altered[at] ?? 0) ^ 1;
    expect(await verdictOn(altered)).toMatch(/^Altered.*differs in/);
  });

  test('knows nothing of a file that is no pack', async () => {
    expect(await verdictOn(new TextEncoder().encode('%PDF-1.7 something else'))).toMatch(/^Unknown/);
  });
});
