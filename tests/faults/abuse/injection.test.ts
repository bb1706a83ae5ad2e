import { parse } from 'parse5';
import { beforeAll, expect, test } from 'vitest';
import { smallRecord, WEIGHED } from '../small-visit.ts';
import { type Abused, abused } from './abused.ts';
import { NASTY_TEXT } from './nasty.ts';

interface Node {
  nodeName: string;
  attrs?: { name: string; value: string }[];
  childNodes?: Node[];
}

/** Elements and attributes that run something, load something or send something somewhere. */
const ACTIVE_ELEMENTS = ['script', 'iframe', 'object', 'embed', 'form', 'base', 'foreignobject'];

function activeParts(node: Node): string[] {
  const attributes = (node.attrs ?? []).filter(
    ({ name, value }) => /^on/i.test(name) || /^\s*(javascript|data|vbscript):|evil\.example/i.test(value),
  );
  return [
    ...(ACTIVE_ELEMENTS.includes(node.nodeName.toLowerCase()) ? [node.nodeName] : []),
    ...attributes.map(({ name, value }) => `${node.nodeName} ${name}=${value}`),
    ...(node.childNodes ?? []).flatMap(activeParts),
  ];
}

let service: Abused;

beforeAll(async () => {
  service = await abused();
});

const TEXTS = NASTY_TEXT.filter((text) => text.trim().length > 0 && text.length <= 200 && !/[\n\r]/.test(text));

test('text of a record never becomes markup, on any page made from it', async () => {
  let kept = 0;
  for (const [index, text] of TEXTS.entries()) {
    const path = `/v1/aircraft/Q-INJ/visits/v${index}`;
    const record = smallRecord('Q-INJ', text, WEIGHED);
    const hostile = { ...record, workshop: { name: text, address: text, contact: text } };
    const put = await service.send(path, { method: 'PUT', body: JSON.stringify(hostile) });
    if (put !== 201) continue;
    kept += 1;
    for (const document of ['owner-summary', 'weighing-report', 'cover', 'release-statement']) {
      const answer = await service.ask(`${path}/documents/${document}`, {
        method: 'GET',
        headers: { Accept: 'text/html' },
      });
      if (answer.status === 404) continue;
      expect(activeParts(parse(await answer.text()) as unknown as Node), text).toEqual([]);
      expect(answer.headers.get('Content-Security-Policy')).toMatch(/default-src 'none'/);
    }
    expect(await service.send(`${path}/pack.pdf`, { method: 'GET' })).toBe(200);
  }
  expect(kept).toBeGreaterThan(TEXTS.length / 2);
});

test('and this test would notice if it did', () => {
  for (const html of ['<p><script>x</script>', '<img src=x onerror=x>', '<a href=" javascript:x">', '<svg onload=x>'])
    expect(activeParts(parse(html) as unknown as Node)).toHaveLength(1);
});
