import { describe, expect, test } from 'vitest';
import { packContext } from '../../../worker/core/pack/context.ts';
import { loadingFacts } from '../../../worker/core/pack/loading-facts.ts';
import { render, type View } from '../../../worker/core/pack/render.ts';
import { loadingSheetView } from '../../../worker/core/pack/views/loading-sheet.ts';
import { ownerSummaryView } from '../../../worker/core/pack/views/owner-summary.ts';
import { weightAndBalanceScheduleView } from '../../../worker/core/pack/views/weight-and-balance-schedule.ts';
import { AT, assessed, posted } from './fixture.ts';

/** The demo visit with other limits, as its documents print it: without marks, and with plain blanks. */
async function documentsWith(aircraft: Record<string, unknown>, name = 'nose-wheel-full') {
  const record = posted(name);
  const assessment = await assessed({ ...record, aircraft: { ...(record.aircraft as object), ...aircraft } });
  const context = packContext(assessment, { of: { draftAt: AT }, recordSha256: assessment.recordSha256 });
  const plain = (template: string, view: View): string =>
    render(template, view)
      .replaceAll(/<[^>]+>/g, ' ')
      .replaceAll(/\s+/g, ' ');
  return {
    summary: plain('owner-summary', ownerSummaryView(context)),
    schedule: plain('weight-and-balance-schedule', weightAndBalanceScheduleView(context)),
    sheet: plain('loading-sheet', loadingSheetView(context)),
    facts: loadingFacts(assessment.visit, assessment.results),
  };
}

describe('what may be loaded', () => {
  test('is the least of all limits, names it, and is the same in every document', async () => {
    const { summary, schedule, sheet, facts } = await documentsWith({ maximumZeroFuelMass: 480 });
    // 480 − 325.86 = 154.1 kg; with 78 l of 0.72 kg/l 210.2 kg.
    const payload = /154\.1 kg \(?339\.7 lb\)? Limited by: maximum zero-fuel mass/;
    const together = /210\.2 kg \(?463\.4 lb\)? Limited by: maximum zero-fuel mass/;
    for (const text of [summary, schedule, sheet]) {
      expect(text).toMatch(payload);
      expect(text).toMatch(together);
      expect(text).not.toMatch(/21[78]\.\d kg/);
    }
    expect(facts?.limits.fullTanksPayload.governedBy).toBe('zero-fuel-mass');
    for (const text of [summary, schedule, sheet]) expect(text).toMatch(/Maximum zero-fuel mass 480\.0 kg/);
  });

  test('is rounded inward, as in the table of baggage: 217.98 kg is 217.9', async () => {
    const { summary, schedule, sheet } = await documentsWith({});
    for (const text of [summary, schedule, sheet]) expect(text).toMatch(/217\.9 kg \(?480\.3 lb/);
    expect(sheet).toMatch(/Two, each 100\.0 25\.0 25\.0 25\.0 17\.9/);
  });

  test('is not lowered where a place of its unit takes it in full: 40 lb', async () => {
    const { sheet } = await documentsWith({}, 'weighing-only');
    expect(sheet).toMatch(/Pilot alone, 160\.0 40\.0 40\.0 40\.0 40\.0/);
    expect(sheet).not.toContain('39.9');
  });

  test('holds the aircraft to its landing mass with full tanks, and says what has to be burnt for more', async () => {
    const { summary, schedule, sheet, facts } = await documentsWith({ maximumLandingMass: 570 });
    // 570 − 325.86 − 56.16 = 187.98 kg. 600 − 570 = 30 kg, of 0.72 kg/l: 41.7 l; of 56.16 kg 26.16 kg are left, 36.3 l.
    for (const text of [summary, schedule, sheet]) {
      expect(text).toContain('Maximum landing mass 570.0 kg');
      expect(text).toMatch(/244\.1 kg \(?538\.1 lb\)? Limited by: maximum landing mass, to land at once/);
      expect(text).toMatch(
        /187\.9 kg \(?414\.2 lb\)? Limited by: maximum landing mass, to land at once with full tanks/,
      );
      expect(text).toContain(
        'To take off with up to 217.9 kg, plan to burn at least 30.0 kg (41.7 l) before landing; at most 26.1 kg (36.3 l) of usable fuel is left then',
      );
    }
    expect(facts?.limits.fullTanksPayload.kg).toBeCloseTo(187.98, 1);
  });

  test('offers no payload that could only be landed with dry tanks', async () => {
    const { summary, schedule, sheet } = await documentsWith({ maximumLandingMass: 530 });
    for (const text of [summary, schedule, sheet]) {
      // 530 − 325.86 − 56.16 = 147.98 kg.
      expect(text).toMatch(
        /147\.9 kg \(?326\.0 lb\)? Limited by: maximum landing mass, to land at once with full tanks/,
      );
      expect(text).toContain('More only if as much fuel is burnt before landing, and the reserve is left');
    }
    expect(sheet).toContain('the excess must be burnt before landing, and the reserve of fuel be left.');
    const heavy = await documentsWith({ maximumLandingMass: 370 });
    expect(heavy.schedule).toContain('with full tanks it cannot land at once, even without load');
  });

  test('rounds the least pilot up in both systems, and says the same everywhere', async () => {
    const aircraft = posted('nose-wheel-full').aircraft as { stations: { id: string }[] };
    const stations = aircraft.stations.map((station) =>
      station.id === 'left-seat' ? { ...station, minimumMass: 53.647 } : station,
    );
    const { summary, sheet, facts } = await documentsWith({ stations });
    // 53.7 / 0.45359237 = 118.39
    for (const text of [summary, sheet]) expect(text).toMatch(/Least solo pilot 53\.7 kg \(?118\.4 lb/);
    expect(sheet).toContain('Left seat: a pilot from 53.7 kg (118.4 lb) may fly alone');
    expect(facts?.leastPilot).toEqual({ station: 'left-seat', kg: 53.647, governedBy: 'placard' });
  });
});

describe('the cockpit card', () => {
  test('has every limit that forbids what it lists', async () => {
    const { sheet } = await documentsWith({ maximumLandingMass: 590 });
    const card = sheet.slice(sheet.indexOf('Cockpit card'));
    for (const limit of [
      'Maximum mass 600.0 kg (1322.7 lb)',
      'Maximum zero-fuel mass 580.0 kg (1278.6 lb)',
      'Maximum landing mass 590.0 kg (1300.7 lb)',
      'Least solo pilot 55.0 kg (121.3 lb)',
      'Both seats together: not above 200 kg – – 200.0 kg (440.9 lb)',
      // The envelope of the record: forward limit 1640 up to 480 kg, then bending to 1675 at 600 kg; aft limit 1800.
      '340.0 1640 1800 480.0 1640 1800 600.0 1675 1800',
    ])
      expect(card).toContain(limit);
  });

  test('rounds the limits of the centre of gravity inward', async () => {
    const envelope = [
      { arm: 1640.2, mass: 340 },
      { arm: 1675.2, mass: 600 },
      { arm: 1800.7, mass: 600 },
      { arm: 1800.7, mass: 340 },
    ];
    const { sheet, schedule } = await documentsWith({ envelope });
    expect(sheet).toContain('340.0 1641 1800 600.0 1676 1800');
    expect(schedule).toContain('1 340.0 1640.2 2 600.0 1675.2');
  });
});

describe('the table of crew and fuel', () => {
  test('says which of four seats its crews sit on, and has rows for all of them', async () => {
    const { stations } = posted('nose-wheel-full').aircraft as { stations: { id: string }[] };
    const rear = ['Rear left seat', 'Rear right seat'].map((name, index) => ({
      ...stations.find(({ id }) => id === 'right-seat'),
      ...{ id: `rear-${index}`, name },
    }));
    const { sheet } = await documentsWith({ seats: 4, stations: [...stations, ...rear] });
    expect(sheet).toContain('All seats, each 60.0');
    expect(sheet).toContain('Pilot alone: Left seat, with every other seat empty.');
    expect(sheet).toContain('Two: Left seat and Right seat, with every other seat empty.');
    const two = await documentsWith({});
    expect(two.sheet).not.toMatch(/All seats|every other seat/);
  });
});

describe('the sentences of the loading sheet', () => {
  test('print limits, and loadings that are called legal, inward', async () => {
    const { stations } = posted('nose-wheel-full').aircraft as { stations: { id: string }[] };
    const odd: Readonly<Record<string, object>> = {
      baggage: { maximumMass: 20.36 },
      'left-seat': { minimumMass: 55.04 },
    };
    const { sheet } = await documentsWith({
      stations: stations.map((station) => ({ ...station, ...odd[station.id] })),
      envelope: [
        { arm: 1640.4, mass: 340 },
        { arm: 1640.4, mass: 600 },
        { arm: 1800.7, mass: 600 },
        { arm: 1800.7, mass: 340 },
      ],
    });
    const text = sheet.slice(0, sheet.indexOf('Cockpit card'));
    expect(text).toContain('Nearest to the forward limit of 1641 mm');
    expect(text).toContain('Nearest to the aft limit of 1800 mm');
    expect(text).toContain('Left seat 55.1 kg');
    expect(text).not.toContain('Left seat 55.0 kg');
    expect(text).toContain('Baggage bay 20.3 kg');
    expect(text).not.toContain('20.4 kg');
  });
});
