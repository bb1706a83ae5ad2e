import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { factsToday } from '../../../worker/core/pack/facts-today.ts';
import { firstEditionFacts } from '../../../worker/core/pack/first-edition-facts.ts';
import { ownerFacts } from '../../../worker/core/pack/owner-facts.ts';
import { type OwnerFacts, readOwnerFacts } from '../../../worker/core/pack/owner-facts-schema.ts';
import { type TighterLimit, tighterLimits } from '../../../worker/core/pack/tighter-limits.ts';
import { tighterText } from '../../../worker/core/pack/tighter-text.ts';
import { recordFormatter } from '../../../worker/core/record/record-formatter.ts';
import { RUNS } from '../../property-runs.ts';
import { AT, assessed, posted } from './fixture.ts';

const WEIGHED_AT = '2026-09-18T16:00:00-05:00';

/** The demo visit, with other limits of the aircraft where asked. */
async function visitWith(aircraft: Record<string, unknown> = {}) {
  const record = posted('nose-wheel-full');
  return assessed({ ...record, aircraft: { ...(record.aircraft as object), ...aircraft } });
}

async function factsWith(aircraft: Record<string, unknown> = {}): Promise<OwnerFacts> {
  const { visit, results } = await visitWith(aircraft);
  return ownerFacts(visit, results, AT);
}

const limit = (facts: OwnerFacts, id: string) => facts.limits.find((each) => each.id === id);

describe('ownerFacts()', () => {
  test('has every limit that a pilot works with, as plain JSON', async () => {
    const facts = await factsWith({ maximumLandingMass: 570 });
    expect(JSON.parse(JSON.stringify(facts))).toEqual(facts);
    expect(JSON.stringify(facts)).not.toContain('undefined');
    expect(facts.limits.map(({ id }) => id)).toEqual([
      'empty-mass',
      'empty-arm',
      'maximum-mass',
      'zero-fuel-mass',
      'landing-mass',
      'useful-load',
      'full-tanks-payload',
      'least-pilot',
      'station/left-seat',
      'station/right-seat',
      'station/baggage',
      'tank/wing-tanks',
      'joint/seats',
    ]);
    expect(limit(facts, 'full-tanks-payload')).toMatchObject({ governedBy: 'landing-mass', bound: 'most' });
    expect(limit(facts, 'least-pilot')).toMatchObject({ value: 55, bound: 'least', governedBy: 'placard' });
    expect(facts.due.find(({ id }) => id === 'L02')).toMatchObject({ meter: 'engine', date: '2027-11-04' });
    expect(facts.due.find(({ id }) => id === 'F4')).toMatchObject({ hours: 1230, date: '2027-01-31' });
    expect((facts.loading as { leastPilot: unknown }).leastPilot).toEqual({
      station: 'left-seat',
      kg: 55,
      governedBy: 'placard',
    });
  });

  test('reads back as what was kept, through JSON', async () => {
    const facts = await factsWith();
    expect(readOwnerFacts(JSON.parse(JSON.stringify(facts)))).toEqual(facts);
  });
});

describe('readOwnerFacts()', () => {
  test('takes what it knows of facts that another edition kept, and never throws', async () => {
    const facts = await factsWith();
    const later = {
      ...facts,
      version: 9,
      limits: [...facts.limits, { id: 'new', name: 'New', quantity: 'force', bound: 'most', value: 1 }, null, 'x'],
      due: 'gone',
    };
    expect(readOwnerFacts(later)).toEqual({ ...facts, due: [] });
    for (const none of [undefined, null, 7, 'text']) expect(readOwnerFacts(none)).toBeUndefined();
    fc.assert(
      fc.property(fc.jsonValue(), (kept) => {
        const read = readOwnerFacts(kept);
        if (read) expect(tighterLimits(read, facts).length).toBeGreaterThan(0);
      }),
      RUNS,
    );
  });
});

describe('tighterLimits()', () => {
  test('is empty between a pack and itself', async () => {
    const facts = await factsWith();
    expect(tighterLimits(facts, facts)).toEqual([]);
  });

  test('lists what allows less now, and nothing that allows more', async () => {
    const [wide, narrow] = [await factsWith(), await factsWith({ maximumZeroFuelMass: 480 })];
    const tighter = tighterLimits(wide, narrow);
    expect(tighter.map(({ id }) => id)).toEqual(['zero-fuel-mass', 'useful-load', 'full-tanks-payload']);
    expect(tighter[2]).toMatchObject({ quantity: 'mass', governedBy: 'zero-fuel-mass' });
    expect(tighter[2]?.sealed).toBeCloseTo(217.98, 2);
    expect(tighter[2]?.now).toBeCloseTo(154.14, 2);
    expect(tighterLimits(narrow, wide)).toEqual([]);
  });

  test('lists a greater least pilot, nobody allowed alone, and a limit that was not there', async () => {
    const facts = await factsWith();
    const but = (id: string, value: number | null): OwnerFacts => ({
      ...facts,
      limits: facts.limits.map((each) => (each.id === id ? { ...each, value } : each)),
    });
    expect(tighterLimits(facts, but('least-pilot', 62))).toMatchObject([{ id: 'least-pilot', sealed: 55, now: 62 }]);
    expect(tighterLimits(facts, but('least-pilot', null))).toMatchObject([
      { id: 'least-pilot', sealed: 55, now: null },
    ]);
    expect(tighterLimits(but('least-pilot', null), facts)).toEqual([]);
    const { limits, ...rest } = facts;
    const without = { ...rest, limits: limits.filter(({ id }) => id !== 'joint/seats') };
    expect(tighterLimits(without, facts)).toMatchObject([
      { id: 'joint/seats', name: 'Both seats together: not above 200 kg', sealed: null, now: 200 },
    ]);
    // 1650.34 mm: whichever way it moved, loadings that were worked out from it are off.
    for (const armMm of [1640, 1660])
      expect(tighterLimits(facts, but('empty-arm', armMm))).toMatchObject([{ id: 'empty-arm', now: armMm }]);
  });

  test('lists what is due sooner, on another meter, or was not said to be due', async () => {
    const facts = await factsWith();
    const but = (id: string, change: object): OwnerFacts => ({
      ...facts,
      due: facts.due.map((each) => (each.id === id ? { ...each, ...change } : each)),
    });
    expect(tighterLimits(facts, but('L02', { date: '2027-10-04' }))).toEqual([
      { id: 'due/L02', name: 'Oil and filter', quantity: 'date', sealed: '2027-11-04', now: '2027-10-04' },
    ]);
    expect(tighterLimits(facts, but('L02', { date: '2027-12-04' }))).toEqual([]);
    expect(tighterLimits(facts, but('L02', { meter: 'airframe' }))).toMatchObject([
      { quantity: 'hours', meter: 'airframe' },
    ]);
    const without = { ...facts, due: facts.due.filter(({ id }) => id !== 'F4') };
    expect(tighterLimits(without, facts).map(({ id, quantity, sealed }) => [id, quantity, sealed])).toEqual([
      ['due/F4', 'date', null],
      ['due/F4', 'hours', null],
    ]);
  });
});

describe('firstEditionFacts()', () => {
  test('says what that edition made of other limits: nothing', async () => {
    const { visit, results } = await visitWith({ maximumZeroFuelMass: 480 });
    const then = firstEditionFacts(visit, results, AT);
    // 600 − 325.864 = 274.136 and, less 56.16, 217.976 kg.
    expect(limit(then, 'useful-load')?.value).toBeCloseTo(274.136, 2);
    expect(limit(then, 'full-tanks-payload')?.value).toBeCloseTo(217.976, 2);
    expect(limit(then, 'full-tanks-payload')?.governedBy).toBeUndefined();
    const tighter = tighterLimits(then, ownerFacts(visit, results, AT));
    expect(tighter.map(({ id, governedBy }) => [id, governedBy])).toEqual([
      ['useful-load', 'zero-fuel-mass'],
      ['full-tanks-payload', 'zero-fuel-mass'],
    ]);
  });

  test('differs in nothing from today’s facts of a visit with no other limits: rounding is no rule', async () => {
    for (const { visit, results } of [await visitWith(), await assessed(posted('weighing-only'), WEIGHED_AT)])
      expect(tighterLimits(firstEditionFacts(visit, results, AT), ownerFacts(visit, results, AT))).toEqual([]);
  });

  test('takes the empty aircraft as the pack of then had it', async () => {
    const { visit, results } = await visitWith();
    const then = firstEditionFacts(visit, results, AT, { emptyMassKg: 320, emptyArmMm: 1651 });
    expect(limit(then, 'useful-load')?.value).toBe(280);
    const tighter = tighterLimits(then, ownerFacts(visit, results, AT)).map(({ id }) => id);
    expect(tighter).toEqual(expect.arrayContaining(['empty-mass', 'empty-arm', 'useful-load', 'full-tanks-payload']));
  });
});

describe('factsToday()', () => {
  const summary = { emptyMassKg: null, emptyArmMm: null, issuedAt: AT };

  test('is what was kept, as long as no rule allows less', async () => {
    const [wide, narrow] = [await visitWith(), await visitWith({ maximumZeroFuelMass: 480 })];
    const kept = ownerFacts(narrow.visit, narrow.results, AT);
    const today = factsToday(wide, { kept, summary });
    // The rules of today would allow more: the pack says less, and that holds.
    expect(today.tighter).toEqual([]);
    expect(today.loading).toEqual(kept.loading);
  });

  test('is the lesser of today where a rule allows less, and says of what', async () => {
    const [wide, narrow] = [await visitWith(), await visitWith({ maximumZeroFuelMass: 480 })];
    const kept = ownerFacts(wide.visit, wide.results, AT);
    const today = factsToday(narrow, { kept, summary });
    expect(today.loading?.limits.fullTanksPayload.governedBy).toBe('zero-fuel-mass');
    const fmt = recordFormatter(narrow.visit);
    const payload = today.tighter.find(({ id }) => id === 'full-tanks-payload');
    expect(payload && tighterText(payload, narrow.visit, fmt).replaceAll('\u00a0', ' ')).toBe(
      'Left for crew and baggage with full tanks: 154.1 kg today; the pack says 218.0 kg',
    );
    expect(tighterText({ ...payload, sealed: null } as TighterLimit, narrow.visit, fmt).replaceAll('\u00a0', ' ')).toBe(
      'Left for crew and baggage with full tanks: 154.1 kg today; the pack does not say it',
    );
  });

  test('says less than a pack whose payload could only be landed with dry tanks', async () => {
    const dry = await visitWith({ maximumLandingMass: 530 });
    const facts = ownerFacts(dry.visit, dry.results, AT);
    // 530 − 325.86 kg, as if all fuel were burnt; with the 56.16 kg of full tanks more than that together.
    const then: Readonly<Record<string, number>> = { 'full-tanks-payload': 204.14, 'useful-load': 260.3 };
    const kept = { ...facts, limits: facts.limits.map((each) => ({ ...each, value: then[each.id] ?? each.value })) };
    const today = factsToday(dry, { kept, summary });
    expect(today.tighter.map(({ id, now, governedBy }) => ({ id, now, governedBy }))).toEqual([
      { id: 'useful-load', now: expect.closeTo(204.14, 1), governedBy: 'landing-mass' },
      { id: 'full-tanks-payload', now: expect.closeTo(147.98, 1), governedBy: 'landing-mass' },
    ]);
  });

  test('holds packs that kept nothing against what their edition printed', async () => {
    const { visit, results } = await visitWith({ maximumZeroFuelMass: 480 });
    const today = factsToday({ visit, results }, { kept: undefined, summary });
    expect(today.tighter.map(({ id }) => id)).toEqual(['useful-load', 'full-tanks-payload']);
    expect(today.loading?.limits.fullTanksPayload.kg).toBeCloseTo(154.14, 2);
  });
});
