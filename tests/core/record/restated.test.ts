import { describe, expect, test } from 'vitest';
import { restatedIn } from '../../../worker/core/record/restated.ts';
import type { StandingFile } from '../../../worker/core/record/standing-file.ts';

const UNITS = { mass: 'kg', arm: 'mm', volume: 'l' };
/** A due line without days. */
const SECOND = { id: 'L02', basis: 'programme', interval: { hours: 100 }, lastDone: { hours: 1100, landings: 800 } };
const FILE: StandingFile = {
  pack: 'Q-SLM-P1-1',
  sha256: '0'.repeat(64),
  sections: {
    units: UNITS,
    aircraft: {
      maximumMass: 600,
      engine: { serial: 'E-1', fuelFlow: 18, fitted: 0 },
      stations: [{ id: 'locker', maximumMass: 20 }],
      loadingLimits: [{ id: 'seats', maximumMass: 200 }],
    },
    baseline: { emptyMass: 352.3871, emptyMoment: 15_505 },
    lives: {
      items: [{ id: 'L01', basis: 'directive', interval: { hours: 100 }, lastDone: { date: '2026-01-10' } }, SECOND],
    },
    electrical: { circuits: [{ id: 'radio', gauge: 'AWG 20', measuredDropV: 0.1 }] },
    bulletins: { items: [{ id: 'SB-1', kind: 'directive', doneOn: '2026-01-10', nextDueDate: '2027-01-10' }] },
  },
  open: [],
  readings: {},
};
const VISIT = { arrivedAt: '2026-11-03T08:00:00Z', workEndedAt: '2026-11-05T14:00:00Z' };

const partsOf = (sections: object): string[] =>
  restatedIn(FILE, { units: UNITS, visit: VISIT, ...sections }).map(({ part }) => part);

/** A section of the file with other members. */
function section(name: keyof StandingFile['sections'], members: object): object {
  return { [name]: { ...(FILE.sections[name] as object), ...members } };
}
const life = (members: object): object => ({
  lives: { items: [{ ...(FILE.sections.lives as { items: object[] }).items[0], ...members }] },
});

describe('restatedIn()', () => {
  test('is empty for a record that repeats the file; one in other units differs in these alone', () => {
    expect(partsOf(FILE.sections)).toEqual([]);
    const inPounds = {
      ...FILE.sections,
      ...section('aircraft', { maximumMass: 1323 }),
      units: { ...UNITS, mass: 'lb' },
    };
    expect(partsOf(inPounds)).toEqual(['/units/mass']);
  });

  test('has a limit that differs, with its path and what it was', () => {
    const stations = [
      { id: 'seat', maximumMass: 110 },
      { id: 'locker', maximumMass: 25 },
    ];
    expect(restatedIn(FILE, { units: UNITS, ...section('aircraft', { stations }) })).toEqual([
      {
        part: '/aircraft/stations/locker/maximumMass',
        since: 'Q-SLM-P1-1',
        before: 20,
        now: 25,
        path: ['aircraft', 'stations', 1, 'maximumMass'],
        isBinding: true,
      },
      {
        part: '/aircraft/stations/seat',
        since: 'Q-SLM-P1-1',
        before: undefined,
        now: { id: 'seat', maximumMass: 110 },
        path: ['aircraft', 'stations', 0],
        isBinding: true,
      },
    ]);
  });

  test('has a limit that is gone; points at the line that drops it', () => {
    const { loadingLimits: _, ...aircraft } = FILE.sections.aircraft as Record<string, unknown>;
    const [gone] = restatedIn(FILE, {
      units: UNITS,
      aircraft,
      standing: { without: ['/aircraft/engine', '/aircraft/loadingLimits/seats'] },
    });
    expect(gone).toMatchObject({ part: '/aircraft/loadingLimits', path: ['standing', 'without', 1] });
    expect(restatedIn(FILE, { units: UNITS, aircraft })[0]?.path).toEqual(['aircraft', 'loadingLimits']);
  });

  test('leaves out what a visit states anew, a closer limit, and a figure copied from print', () => {
    expect(partsOf(section('aircraft', { engine: { serial: 'E-2', fuelFlow: 18, fitted: 1 } }))).toEqual([]);
    expect(partsOf(section('aircraft', { engine: { serial: 'E-1', fuelFlow: 18, fitted: 1 } }))).toEqual([
      '/aircraft/engine/fitted',
    ]);
    expect(partsOf(section('aircraft', { maximumLandingMass: 580 }))).toEqual([]);
    expect(partsOf({ baseline: { emptyMass: 352.4, emptyMoment: 15_505 } })).toEqual([]);
    expect(partsOf({ baseline: { emptyMass: 325.4, emptyMoment: 15_505 } })).toEqual(['/baseline/emptyMass']);
    expect(
      partsOf(section('electrical', { circuits: [{ id: 'radio', gauge: 'AWG 20', measuredDropV: 0.2 }] })),
    ).toEqual([]);
  });

  test('compares an empty arm with the moment of the file', () => {
    expect(partsOf({ baseline: { emptyMass: 352.4, emptyArm: 44 } })).toEqual([]);
    expect(partsOf({ baseline: { emptyMass: 352.4, emptyArm: 47 } })).toEqual(['/baseline/emptyMoment']);
  });

  test('has a load that was there and is stated as added, but not one that is removed', () => {
    const loadsOf = (change: string) => ({ units: UNITS, electrical: { loads: [{ id: 'lamp', change }] } });
    const file = { ...FILE, sections: loadsOf('kept') };
    expect(restatedIn(file, loadsOf('added')).map(({ part }) => part)).toEqual(['/electrical/loads/lamp/change']);
    expect(restatedIn(file, loadsOf('removed'))).toEqual([]);
  });

  test('has a measured figure and a bulletin that are dropped, but not one that is open', () => {
    const circuits = [{ id: 'radio', gauge: 'AWG 20' }];
    expect(partsOf({ electrical: { circuits } })).toEqual(['/electrical/circuits/radio/measuredDropV']);
    const bulletins = { items: [] };
    expect(partsOf({ bulletins })).toEqual(['/bulletins/items/SB-1']);
    expect(restatedIn({ ...FILE, open: [{ kind: 'bulletin', id: 'SB-1' }] }, { units: UNITS, bulletins })).toEqual([]);
  });

  test('has a term that differs, and a time last done outside the visit, but not one within it', () => {
    expect(partsOf(life({ basis: 'owner' }))).toEqual(['/lives/items/L01/basis']);
    expect(partsOf(life({ interval: { hours: 1000 } }))).toEqual(['/lives/items/L01/interval/hours']);
    expect(partsOf(life({ lastDone: { date: '2026-06-10' } }))).toEqual(['/lives/items/L01/lastDone/date']);
    expect(partsOf(life({ lastDone: { date: '2026-11-04' } }))).toEqual([]);
    const readings = [{ id: 'airframe', inHours: 1200 }];
    const without = (lastDone: object): string[] =>
      partsOf({ lives: { items: [{ ...SECOND, lastDone }] }, meters: { readings, landings: 900 } });
    expect(without({ hours: 1200.4, landings: 900 })).toEqual([]);
    expect(without({ hours: 1150, landings: 800 })).toEqual(['/lives/items/L02/lastDone/hours']);
  });

  test('has what a bulletin says, but not the next time of one that was done again', () => {
    const bulletin = (members: object): object => ({
      bulletins: { items: [{ ...(FILE.sections.bulletins as { items: object[] }).items[0], ...members }] },
    });
    expect(partsOf(bulletin({ kind: 'information' }))).toEqual(['/bulletins/items/SB-1/kind']);
    expect(partsOf(bulletin({ nextDueDate: '2028-01-10' }))).toEqual(['/bulletins/items/SB-1/nextDueDate']);
    expect(partsOf(bulletin({ doneOn: '2026-11-04', nextDueDate: '2027-11-04' }))).toEqual([]);
  });

  test('has an entry that a whole record drops, but not one of an item that was removed', () => {
    const electrical = { circuits: [] };
    expect(partsOf({ electrical })).toEqual(['/electrical/circuits/radio']);
    const modifications = [{ changes: [{ kind: 'removed', item: 'radio' }] }];
    expect(partsOf({ electrical, modifications })).toEqual([]);
  });

  test('says of a system that it is a question', () => {
    const [found] = restatedIn(FILE, {
      units: UNITS,
      ...section('electrical', { circuits: [{ id: 'radio', gauge: 'AWG 24' }] }),
    });
    expect(found).toMatchObject({ part: '/electrical/circuits/radio/gauge', isBinding: false });
  });
});
