import { describe, expect, test } from 'vitest';
import { type Answer, answerTo } from '../../site/browser/loading/answer.ts';
import { type Asked, entryOf, fieldsFor, hintOf } from '../../site/browser/loading/fields.ts';
import { type LoadingFacts, loadingFacts } from '../../worker/core/pack/loading-facts.ts';
import { formatterFor } from '../../worker/core/text/formatter.ts';
import { RELEASABLE_AT } from '../core/gate/assess-record.ts';
import { assessed, posted } from '../core/pack/fixture.ts';

/** A page of a visit: what it says to what is typed into its fields, by their names. */
async function page(name: string, change: (facts: LoadingFacts) => LoadingFacts = (facts) => facts) {
  const { visit, results } = await assessed(posted(name), RELEASABLE_AT[name]);
  const given = loadingFacts(visit, results);
  if (!given) throw new Error('The visit has a loading');
  const facts = change(JSON.parse(JSON.stringify(given)) as LoadingFacts);
  const fmt = formatterFor(facts.units);
  const asked = fieldsFor(facts, fmt);
  const field = (id: string): Asked => {
    const found = asked.find((each) => each.id === id);
    if (!found) throw new Error(`No field ${id}`);
    return found;
  };
  const answer = (typed: Record<string, string>): Answer =>
    answerTo(
      Object.fromEntries(asked.map((each) => [each.id, entryOf(typed[each.id] ?? '', each)])),
      facts,
      asked,
      fmt,
    );
  return { answer, field, hint: (id: string) => hintOf(field(id), fmt) };
}

const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

describe('the loading check', () => {
  test('is never inside below the least pilot, and says by how much', async () => {
    const { answer, hint } = await page('nose-wheel-full');
    const { tone, head, station } = answer({ 'left-seat': '40', 'wing-tanks': '5', burn: '4' });
    expect([tone, plain(head), station]).toEqual([
      'outside',
      'Left seat: 15.0 kg below the least pilot of 55.0 kg',
      'left-seat',
    ]);
    expect(answer({ 'left-seat': '55', 'wing-tanks': '5', burn: '4' }).tone).toBe('inside');
    expect(hint('left-seat')).toBe('at least 55, at most 110');
    expect(hint('right-seat')).toBe('at most 110');
    expect(hint('wing-tanks')).toBe('at most 78');
  });

  test('is never inside below the least pilot in pounds either', async () => {
    const { answer, hint } = await page('weighing-only');
    expect(answer({ 'left-seat': '80', 'header-tank': '0', 'wing-tank': '8', burn: '5' }).tone).toBe('outside');
    expect(hint('left-seat')).toBe('at least 120, at most 240');
  });

  test('asks for the pilot first, whoever else is aboard', async () => {
    const { answer } = await page('nose-wheel-full');
    for (const typed of [
      { 'right-seat': '82' },
      { baggage: '10', 'wing-tanks': '40', burn: '10' },
      { 'left-seat': '0' },
    ]) {
      const { tone, head, lines, check } = answer(typed as Record<string, string>);
      expect([tone, head, lines, check]).toEqual(['neutral', 'Enter the pilot first.', [], undefined]);
    }
  });

  test('is green before pilot, fuel and burn are given in no case', async () => {
    const { answer } = await page('nose-wheel-full');
    for (const typed of [
      { 'left-seat': '85' },
      { 'left-seat': '85', 'wing-tanks': '40' },
      { 'left-seat': '85', burn: '0' },
    ])
      expect(answer(typed as Record<string, string>).tone).toBe('neutral');
    expect(answer({ 'left-seat': '85', 'wing-tanks': '40', burn: '0' }).tone).toBe('inside');
  });

  test('is never green with a tank left blank, and says which', async () => {
    const { answer } = await page('weighing-only');
    const { tone, head } = answer({ 'left-seat': '170', 'wing-tank': '8', burn: '5' });
    expect([tone, head]).toEqual(['neutral', 'Still to be typed: Header tank, usable fuel. Type 0 for none.']);
    expect(answer({ 'left-seat': '170', 'header-tank': '0', 'wing-tank': '8', burn: '5' }).tone).toBe('inside');
  });

  test('is never green with a seat left blank from which the aircraft may be flown', async () => {
    const { answer } = await page('nose-wheel-full', ({ aircraft, ...facts }) => ({
      ...facts,
      aircraft: {
        ...aircraft,
        stations: aircraft.stations.map((each) => (each.kind === 'passenger' ? { ...each, kind: 'pilot' } : each)),
      },
    }));
    // Alone, 40 kg are below the least solo pilot of 55 kg; with somebody in the other seat they may be enough.
    for (const alone of ['40', '85'])
      expect(answer({ 'left-seat': alone, 'wing-tanks': '40', burn: '10' }).head).toBe(
        'Still to be typed: Right seat. Type 0 for none.',
      );
    expect(answer({ 'left-seat': '85', 'right-seat': '0', 'wing-tanks': '40', burn: '10' }).tone).toBe('inside');
  });

  // 14 CFR 91.151 (a) and EU 965/2012, NCO.OP.125 (b): fuel to the destination and a reserve beyond it; from memory.
  test('is never green without usable fuel, nor where the flight burns all of it', async () => {
    const { answer } = await page('nose-wheel-full');
    for (const [fuel, burn, said] of [
      ['0', '0', 'No usable fuel is aboard.'],
      ['0', '10', 'No usable fuel is aboard.'],
      ['40', '40', 'This burns all usable fuel: nothing is left as a reserve.'],
      ['40', '41', 'More is to be burnt than is aboard.'],
    ] as const) {
      const { tone, head, lines } = answer({ 'left-seat': '85', 'wing-tanks': fuel, burn });
      expect([tone, head]).toEqual(['outside', said]);
      expect(lines.join(' ')).not.toContain('Inside with more');
    }
    expect(answer({ 'left-seat': '85', 'wing-tanks': '40', burn: '30' }).tone).toBe('inside');
  });

  test('says nothing of a landing mass before the burn is typed', async () => {
    const { answer } = await page('nose-wheel-full', (facts) => ({
      ...facts,
      aircraft: { ...facts.aircraft, maximumLandingMassKg: 500 },
    }));
    // 325.86 + 160 + 36 = 521.9 kg at take-off, 485.9 kg without fuel.
    const { tone, head } = answer({ 'left-seat': '90', 'right-seat': '70', 'wing-tanks': '50' });
    expect([tone, head]).toEqual(['neutral', 'Still to be typed: Fuel burnt on the flight. Type 0 for none.']);
  });

  test('says a limit that joins places in one sentence, as the record words it', async () => {
    const text = 'Seats and baggage bay together: not above 150 kg';
    const joined = { id: 'joined', text, stations: ['left-seat', 'right-seat', 'baggage'], maximumMassKg: 150 };
    const { answer } = await page('nose-wheel-full', (facts) => ({
      ...facts,
      aircraft: { ...facts.aircraft, loadingLimits: [joined] },
    }));
    expect(plain(answer({ 'left-seat': '90', 'right-seat': '70', baggage: '5' }).head)).toBe(
      '15.0 kg over the limit “Seats and baggage bay together: not above 150 kg”',
    );
  });

  test('says at once what no fuel can mend', async () => {
    const { answer } = await page('nose-wheel-full');
    expect(plain(answer({ 'left-seat': '120' }).head)).toBe('Over the limit of Left seat by 10.0 kg');
  });

  test('asks for neither fuel nor burn where the aircraft has no tank', async () => {
    const { answer } = await page('nose-wheel-full', ({ aircraft, ...facts }) => ({
      ...facts,
      aircraft: { ...aircraft, stations: aircraft.stations.filter(({ kind }) => kind !== 'fuel') },
    }));
    const { tone, head } = answer({ 'left-seat': '85' });
    expect([tone, head]).toEqual(['inside', 'Inside']);
    expect(answer({}).head).toBe('Type in who and what goes aboard.');
  });

  test('takes a number with the unit of its field, and says what cannot be', async () => {
    const { answer, field } = await page('nose-wheel-full');
    expect(entryOf('85 kg', field('left-seat'))).toEqual({ state: 'read', kg: 85, isBeyond: false });
    expect(entryOf('85KG', field('left-seat'))).toEqual({ state: 'read', kg: 85, isBeyond: false });
    expect(entryOf('85 lb', field('left-seat'))).toEqual({ state: 'unreadable' });
    expect(entryOf('110.1', field('left-seat'))).toMatchObject({ state: 'read', isBeyond: true });
    expect(answer({ 'left-seat': '-5' }).head).toBe('Not judged: Left seat cannot be negative.');
    expect(plain(answer({ 'left-seat': '85', 'wing-tanks': '78.1' }).head)).toBe(
      'Not judged: Wing tanks, usable fuel cannot be more than the tank holds, 78 l.',
    );
    expect(answer({ 'left-seat': '85', 'wing-tanks': '78', burn: '10' }).tone).toBe('inside');
  });

  test('says how much must go where no single change is enough', async () => {
    const { answer } = await page('nose-wheel-full', (facts) => ({
      ...facts,
      aircraft: { ...facts.aircraft, maximumMassKg: 500, maximumZeroFuelMassKg: undefined },
    }));
    // 325.86 + 100 + 90 + 0.72 · 15 = 526.7 kg; of fuel and baggage only 10.8 kg could go, and the flight burns 14 l of it.
    const { tone, head, lines } = answer({ 'left-seat': '100', 'right-seat': '90', 'wing-tanks': '15', burn: '14' });
    expect([tone, plain(head)]).toEqual(['outside', 'Too heavy by 26.7 kg']);
    expect(lines.map(plain)).toContain('No single change is enough: 26.7 kg must go.');
  });

  test('proposes what to take out in steps of the field, enough and not a step too much', async () => {
    const { answer } = await page('nose-wheel-full');
    const { lines } = answer({ 'left-seat': '110', 'right-seat': '90', baggage: '25', 'wing-tanks': '78', burn: '10' });
    // 325.86 + 225 + 56.16 = 607.0 kg, of 600: 7.02 kg, or 9.75 l.
    expect(lines.map(plain)).toContain('Inside with less on Wing tanks, usable fuel: 10 l.');
    expect(lines.map(plain)).toContain('Inside with less on Baggage bay: 7.5 kg.');
  });

  test('holds the end of the planned burn to the landing mass', async () => {
    const { answer } = await page('nose-wheel-full', (facts) => ({
      ...facts,
      aircraft: { ...facts.aircraft, maximumLandingMassKg: 500 },
    }));
    const typed = { 'left-seat': '90', 'right-seat': '70', 'wing-tanks': '50' };
    const { tone, head, lines } = answer({ ...typed, burn: '20' });
    // 325.86 + 160 + 36 − 14.4 = 507.5 kg
    expect([tone, plain(head)]).toEqual(['outside', 'Over the maximum landing mass by 7.5 kg']);
    expect(lines.map(plain).join(' ')).toMatch(/After the planned burn: 507\.5 kg at 17\d\d mm\. Maximum 500\.0 kg\./);
    expect(answer({ ...typed, burn: '31' }).tone).toBe('inside');
  });
});
