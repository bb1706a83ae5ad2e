import { describe, expect, test } from 'vitest';
import { draftDocuments } from '../../../worker/core/core.ts';
import { patched } from '../../json-patch.ts';
import { AT, assessed, posted } from './fixture.ts';

const TRACTION = {
  nominalV: 320,
  isolation: { by: 'tomas', secondBy: 'mila', at: '2026-11-04T09:10:00+01:00' },
  insulation: { resistanceMohm: 12.5, limitMohm: 0.5, testV: 500, by: 'tomas', at: '2026-11-04T09:20:00+01:00' },
  disconnect: { isOpened: true, by: 'mila', at: '2026-11-05T12:30:00+01:00' },
};

/** The findings on the demo visit with such a circuit, and its electrical document as plain text. */
async function withTraction(traction: object) {
  const visit = await assessed(
    patched(posted('nose-wheel-full'), [{ op: 'add', path: '/electrical/traction', value: traction }]),
  );
  const document = (await draftDocuments(visit, AT)).find(({ id }) => id === 'electrical-load-analysis');
  const text = (document?.html ?? '').replaceAll(/<[^>]+>/g, ' ').replaceAll(/\s+/g, ' ');
  const found = visit.findings.filter(({ pointer }) => pointer.startsWith('/electrical/traction'));
  return { text, found: found.map(({ code, pointer }) => [code, pointer]) };
}

describe('a traction circuit', () => {
  test('is printed with its caution, and with who did each check and when', async () => {
    const { text, found } = await withTraction(TRACTION);
    expect(found).toEqual([]);
    for (const printed of [
      /High voltage\. 320 V between the poles/,
      /proved dead by Tomas Arendt, watched by Mila Okonski, 4 Nov 2026 09:10/,
      /12\.5 MΩ at 500 V, limit 0\.5 MΩ; Tomas Arendt, 4 Nov 2026 09:20/,
      /opened the circuit; Mila Okonski, 5 Nov 2026 12:30/,
    ])
      expect(text).toMatch(printed);
  });

  test('says what is missing, where nothing else is stated', async () => {
    const { text, found } = await withTraction({ nominalV: 320 });
    expect(found).toEqual([
      ['TRACTION_ISOLATION_UNPROVED', '/electrical/traction/isolation'],
      ['TRACTION_CHECK_INCOMPLETE', '/electrical/traction/insulation'],
      ['TRACTION_CHECK_INCOMPLETE', '/electrical/traction/disconnect'],
    ]);
    expect(text.match(/(before the work|to the airframe|Emergency disconnect) not stated/g)).toHaveLength(3);
  });

  test('is not measured before it was isolated', async () => {
    const insulation = { ...TRACTION.insulation, at: '2026-11-04T09:00:00+01:00' };
    expect((await withTraction({ ...TRACTION, insulation })).found).toEqual([
      ['DATES_OUT_OF_ORDER', '/electrical/traction/insulation/at'],
    ]);
  });

  test('has no place in the document of an aircraft without one', async () => {
    const documents = await draftDocuments(await assessed(posted('nose-wheel-full')), AT);
    expect(documents.map(({ html }) => html).join('')).not.toMatch(/Traction circuit|High voltage/);
  });
});
