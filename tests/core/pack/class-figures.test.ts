import { describe, expect, test } from 'vitest';
import { type DocumentLines, documentLines } from './document-lines.ts';

// Every figure is worked out here once more, from the numbers of the record in its own units, with nothing but sums: what a
// workshop does with a pocket calculator. Each is looked for in a line of the pack to its last printed digit.

const mean = (...readings: number[]): number => readings.reduce((sum, each) => sum + each, 0) / readings.length;
/** A figure as printed, half a digit rounded away from zero. */
const near = (value: number, decimals: number): string => value.toFixed(decimals);
const signed = (value: number, decimals: number): string => (value > 0 ? '+' : '') + near(value, decimals);
/** A limit that may not be exceeded is never rounded up. */
const atMost = (value: number, decimals: number): string =>
  near(Math.floor(value * 10 ** decimals) / 10 ** decimals, decimals);

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`);

/** Whether a line has each of the words and figures, in this order, and no figure as a part of a longer one. */
function holds(line: string, parts: readonly string[]): boolean {
  const pattern = parts.map((part) => `(?<![\\d.])${escaped(part)}(?!\\.?\\d)`).join('.*?');
  return new RegExp(pattern).test(line);
}

function expectLine(documents: DocumentLines, id: RegExp, ...parts: string[]): void {
  const lines = documents.of(id);
  expect(
    lines.some((line) => holds(line, parts)),
    `${id}: ${parts.join(' … ')}\n${lines.join('\n')}`,
  ).toBe(true);
}

const SCHEDULE = /^weight-and-balance-schedule$/;
const SHEET = /^loading-sheet$/;
const WEIGHING = /^weighing-report$/;
const EVERY = /./;

/** A standard person of 86 kg, by the generic regime, in lb. */
const PERSON_LB = 86 / 0.45359237;

describe('a helicopter', async () => {
  const documents = await documentLines('helicopter');
  const [left, right, aft] = [mean(212.4, 212.6, 212.4), mean(210.8, 210.6, 210.8), mean(425.4, 425.2, 425.4)];
  const massLb = left + right + aft;
  const moment = 79 * left + 79 * right + 129.4 * aft;
  const lateral = -12 * left + 12 * right + 0.2 * aft;
  const fuelLb = 6 * (19.8 - 0.6) + 6 * (10.7 - 0.2);

  test('as weighed, along and across', () => {
    expectLine(documents, SCHEDULE, `${near(massLb, 1)} lb`);
    expectLine(documents, SCHEDULE, `${near(moment / massLb, 3)} in`);
    expectLine(documents, SCHEDULE, `${near(moment, 1)} lb·in`);
    expectLine(documents, SCHEDULE, `${signed(lateral / massLb, 3)} in`, `${signed(lateral, 1)} lb·in`);
    expectLine(documents, WEIGHING, 'Front jack point, right', near(right, 2), '79.000', near(79 * right, 1));
  });

  test('with both doors off', () => {
    const [offLb, offMoment] = [massLb - 5.2 - 5.2, moment - (5.2 + 5.2) * 77.5];
    const offLateral = lateral - 5.2 * 21 - 5.2 * -21;
    const figures = [near(offLb, 2), near(offMoment / offLb, 3), near(offMoment, 1), signed(offLateral / offLb, 3)];
    expectLine(documents, SCHEDULE, 'Both doors off', ...figures);
    expectLine(documents, /^loading-sheet-doors-off$/, `${atMost(1370 - offLb, 1)} lb`);
    expectLine(documents, /^loading-sheet-doors-off$/, `${atMost(1370 - offLb - fuelLb, 1)} lb`);
  });

  test('with a standard pilot and full tanks, along and across, and when the fuel is gone', () => {
    expectLine(documents, SCHEDULE, `${atMost(1370 - massLb, 1)} lb`);
    const [mainLb, auxLb] = [6 * 19.2, 6 * 10.5];
    const [dryLb, dryMoment] = [massLb + PERSON_LB, moment + PERSON_LB * 78];
    const fullLb = dryLb + mainLb + auxLb;
    const fullMoment = dryMoment + mainLb * 108.6 + auxLb * 103.8;
    const full = [near(fullLb, 1), near(fullMoment / fullLb, 2)];
    expectLine(documents, SHEET, 'Main tank', ...full, near(dryLb, 1), near(dryMoment / dryLb, 2));
    const dryLateral = lateral + PERSON_LB * 10.7;
    const fullLateral = dryLateral + mainLb * -11 + auxLb * 11.2;
    expectLine(documents, SHEET, signed(fullLateral / fullLb, 3), signed(dryLateral / dryLb, 3));
  });

  test('has rotors, and no propeller', () => {
    expect(documents.of(EVERY).filter((line) => /propeller/i.test(line))).toEqual([]);
    expect(documents.of(EVERY).filter((line) => /baggage allowed/i.test(line))).toEqual([]);
  });
});

describe('a glider', async () => {
  const documents = await documentLines('glider');
  const [main, tail] = [mean(217.1, 217.2, 217.1), mean(29.86, 29.88, 29.86)];
  const massKg = main + tail;
  const moment = 87 * main + 4328 * tail;

  test('as weighed', () => {
    expectLine(documents, SCHEDULE, `${near(massKg, 1)} kg`);
    expectLine(documents, SCHEDULE, `${near(moment / massKg, 1)} mm`);
    expectLine(documents, SCHEDULE, `${near(moment, 0)} kg·mm`);
    expectLine(documents, WEIGHING, 'Spornrad auf Bock', near(tail, 2), '4328.0', near(4328 * tail, 0));
  });

  test('pilots of both states, by the limits of 250 and 400 mm and the seat from 65 to 110 kg', () => {
    /** Moment about a limit of what is aboard besides the pilot, over the lever of the pilot at −560 mm. */
    const pilotOn = (limitMm: number, aboard: readonly (readonly [kg: number, mm: number])[]): number =>
      aboard.reduce((sum, [kg, mm]) => sum + kg * (mm - limitMm), moment - massKg * limitMm) / (limitMm + 560);
    // The fin is empty, and the wings may hold anything up to 150 kg at 205 mm: full is worst for the forward limit, empty for the aft.
    const most = pilotOn(250, [[150, 205]]);
    const least = pilotOn(400, []);
    expect(least).toBeLessThan(65);
    expectLine(documents, SHEET, 'Hecktank leer', `${near(65, 1)} kg`, `${atMost(most, 1)} kg`);
    const filled = [
      [150, 205],
      [5.4, 4310],
    ] as const;
    expect(pilotOn(400, filled)).toBeLessThan(65);
    expect(Math.min(pilotOn(250, filled), 525 - massKg - 155.4, 254 + 136.4 - massKg)).toBeGreaterThan(110);
    expectLine(documents, SHEET, 'Flügel- und Hecktank voll', `${near(65, 1)} kg`, `${near(110, 1)} kg`);
  });

  test('water: 150 l at 1800 l/h, 5.5 l at 110 l/h, and a fin that follows the wings', () => {
    expectLine(documents, SHEET, 'Flügeltanks', '150.0 l', '150.0 kg', `${near((150 / 1800) * 60, 0)} min`);
    expectLine(documents, SHEET, 'Hecktank', '5.5 l', '5.5 kg', `${near((5.5 / 110) * 60, 0)} min`);
    expectLine(documents, SHEET, 'Hecktank', '40.0 kg', '1.30 kg', '80.0 kg', '2.90 kg', '150.0 kg', '5.40 kg');
  });

  test('has no fuel, no oil and no engine, and says so once', () => {
    const lines = documents.of(EVERY);
    expect(lines.filter((line) => /kraftstoff|(?<!\p{L})öl(?!\p{L})/iu.test(line))).toEqual([
      'Kraftstoff kein Tank',
      'Öl kein Öl',
    ]);
    expect(lines.filter((line) => /triebwerk|propeller|motor/i.test(line))).toEqual([]);
  });
});

describe('a self-launching glider', async () => {
  const documents = await documentLines('self-launching-glider');
  const [main, tail] = [mean(354.4, 354.5, 354.4), mean(47.66, 47.64, 47.66)];
  const massKg = main + tail;
  const moment = 80 * main + 4185 * tail;
  const outMoment = moment - 24.5 * 1050 + 24.5 * 640;
  const [removedKg, removedMoment] = [massKg - 38.2, moment - 38.2 * 930];

  test('as weighed, and with its engine out or removed', () => {
    expectLine(documents, SCHEDULE, `${near(massKg, 1)} kg`);
    expectLine(documents, SCHEDULE, `${near(moment / massKg, 1)} mm`);
    expectLine(
      documents,
      SCHEDULE,
      'Motor ausgefahren',
      near(massKg, 2),
      near(outMoment / massKg, 1),
      near(outMoment, 0),
    );
    const removed = [near(removedKg, 2), near(removedMoment / removedKg, 1), near(removedMoment, 0)];
    expectLine(documents, SCHEDULE, 'Motor ausgebaut', ...removed);
  });

  test('pilots without and with 9 kg of ballast in the nose, by the limits of 180 and 415 mm and the seat', () => {
    const fuelKg = 19.5 * 0.74;
    /** The least pilot with the fuel that is worst, at 620 mm, aft of the limit; the greatest with the water and no fuel. */
    const leastWith = (ballastKg: number): number =>
      (moment - massKg * 415 + fuelKg * (620 - 415) + ballastKg * (-1650 - 415)) / (415 + 540);
    expect(leastWith(0)).toBeLessThan(70);
    expect(leastWith(9)).toBeLessThan(70);
    // Wing water at 190 mm lies aft of the forward limit, and helps: none is worst.
    const mostWith = (ballastKg: number): number => (moment - massKg * 180 + ballastKg * (-1650 - 180)) / (180 + 540);
    expect(mostWith(9)).toBeGreaterThan(115);
    for (const state of ['Ohne Trimmballast', 'Mit 9 kg Trimmballast'])
      expectLine(documents, SHEET, state, '70.0 kg', '115.0 kg');
  });

  test('loads by the maximum mass and by the non-lifting parts, with the engine in and removed', () => {
    const fuelKg = 19.5 * 0.74;
    expectLine(documents, SHEET, `${atMost(600 - massKg, 1)} kg`);
    // 360 kg for all but the wings of 168 kg, less the empty aircraft without its wings, and the fuel.
    expectLine(documents, SHEET, `${atMost(360 - (massKg - 168) - fuelKg, 1)} kg`);
    expectLine(documents, /^loading-sheet-engine-removed$/, `${atMost(600 - removedKg, 1)} kg`);
    expectLine(documents, SHEET, 'Flügeltanks', '100.0 l', '100.0 kg', `${near((100 / 1200) * 60, 0)} min`);
  });

  test('has an engine without oil', () => {
    const lines = documents.of(EVERY).filter((line) => /(?<!\p{L})öl(?!\p{L})/iu.test(line));
    expect(lines).toEqual(['Öl kein Öl']);
  });
});

describe('a gyroplane', async () => {
  const documents = await documentLines('gyroplane');
  const [left, right, nose] = [mean(126.9, 126.8, 126.9), mean(126.2, 126.3, 126.2), mean(13.15, 13.1, 13.15)];
  // The seat cushions of 5.7 kg at 1580 mm were not aboard.
  const massKg = left + right + nose + 5.7;
  const moment = 2360 * left + 2360 * right + 1000 * nose + 5.7 * 1580;

  test('as weighed, with the cushions that were missing', () => {
    expectLine(documents, WEIGHING, 'Seat cushions', '5.70', '1580.0', near(5.7 * 1580, 0));
    expectLine(documents, SCHEDULE, `${near(massKg, 1)} kg`);
    expectLine(documents, SCHEDULE, `${near(moment / massKg, 1)} mm`);
    expectLine(documents, SCHEDULE, `${near(moment, 0)} kg·mm`);
    expectLine(documents, SCHEDULE, `${atMost(450 - massKg, 1)} kg`);
    expectLine(documents, SCHEDULE, `${atMost(450 - massKg - 65 * 0.72, 1)} kg`);
  });

  test('hangs within 6° to 12°, and its centre of gravity follows from two tests', () => {
    for (const angle of ['+8.6', '+9.7', '+6.4']) expectLine(documents, WEIGHING, angle);
    // 400.7 kg hang 8.6° nose down; with 10 kg more, 1800 mm aft of the bolt and 1250 mm below it, 6.4°.
    const slope = (degrees: number): number => -Math.tan((degrees * Math.PI) / 180);
    const depthMm = (10 * (1800 - 1250 * slope(6.4))) / (400.7 * (slope(6.4) - slope(8.6)));
    expectLine(documents, WEIGHING, `${near(2290 + depthMm * slope(8.6), 0)} ±`, `${near(depthMm, 0)} ±`);
  });

  test('has no envelope, no place for baggage and no hang point of a wing', () => {
    expect(documents.of(SHEET).filter((line) => /baggage|hang point|\b(forward|aft)\b/i.test(line))).toEqual([]);
  });
});

describe('a powered parachute', async () => {
  const documents = await documentLines('powered-parachute');
  const [left, right, nose] = [138.5, 139, mean(96.8, 97, 96.8)];
  const massLb = left + right + nose;
  const moment = -65 * nose;

  test('as weighed, ahead of its datum', () => {
    expectLine(documents, SCHEDULE, `${near(massLb, 1)} lb`);
    expectLine(documents, SCHEDULE, `${near(moment / massLb, 3)} in`);
    expectLine(documents, SCHEDULE, `${near(moment, 1)} lb·in`);
    expectLine(documents, SCHEDULE, `${atMost(900 - massLb, 1)} lb`);
    expectLine(documents, SCHEDULE, `${atMost(900 - massLb - 9.8 * 6, 1)} lb`);
  });

  test('the hole of the risers goes by whoever sits in front', () => {
    expectLine(documents, SHEET, '140.0', '140.0', 'Hole 1, rear');
    expectLine(documents, SHEET, '160.0', '160.0', 'Hole 2');
    // 200 lb is the end of one line of the table and the beginning of the next.
    expectLine(documents, SHEET, '200.0', '200.0', 'Hole 2', 'Hole 3, front');
    expectLine(documents, SHEET, '240.0', '240.0', 'Hole 3, front');
  });

  test('has an engine without oil, no envelope and no surfaces to move', () => {
    const lines = documents.of(EVERY);
    expect(lines.filter((line) => /(?<!\p{L})oil(?!\p{L})/iu.test(line))).toEqual(['Oil no oil']);
    expect(lines.filter((line) => /aileron|elevator|rudder|surface/i.test(line))).toEqual([]);
    expect(documents.of(SHEET).filter((line) => /baggage|\b(forward|aft)\b/i.test(line))).toEqual([]);
  });
});

describe('a trike weighed on its hang bolt', async () => {
  const documents = await documentLines('weight-shift-hung');
  const [trike, wing] = [mean(172.2, 172.3, 172.2), mean(51.15, 51.2, 51.15)];
  const massKg = trike + wing;

  test('as weighed, trike and wing apart', () => {
    expectLine(documents, SCHEDULE, `${near(massKg, 1)} kg`);
    expectLine(documents, SCHEDULE, `${near((wing * 4) / massKg, 2)} cm`);
    expectLine(documents, SCHEDULE, `${near(wing * 4, 0)} kg·cm`);
    expectLine(documents, WEIGHING, 'Leer, Tank leer', '+3.8');
  });

  test('hang points by the mass at take-off with full tanks, never above 450 kg', () => {
    const takeOff = (crewKg: number): string => near(Math.min(450, massKg + crewKg + 39 * 0.72), 1);
    expectLine(documents, SHEET, '80.0', takeOff(80), 'Hinteres Loch', 'Mittleres Loch');
    expectLine(documents, SHEET, '90.0', takeOff(90), 'Mittleres Loch');
    expectLine(documents, SHEET, '80.0', takeOff(160), 'Mittleres Loch', 'Vorderes Loch');
    expectLine(documents, SHEET, '100.0', takeOff(200), 'Vorderes Loch');
    expectLine(documents, SCHEDULE, `${atMost(450 - massKg, 1)} kg`);
    expectLine(documents, SCHEDULE, `${atMost(450 - massKg - 39 * 0.72, 1)} kg`);
  });

  test('has an engine without oil, no envelope and no surfaces to move', () => {
    const lines = documents.of(EVERY);
    expect(lines.filter((line) => /(?<!\p{L})öl(?!\p{L})/iu.test(line))).toEqual(['Öl kein Öl']);
    expect(lines.filter((line) => /ruder\b|steuerfläche/i.test(line))).toEqual([]);
    expect(documents.of(SHEET).filter((line) => /gepäck(?! und)|zu weit/i.test(line))).toEqual([]);
  });
});

describe('an electric aeroplane', async () => {
  const documents = await documentLines('electric-aeroplane');
  const [left, right, nose] = [mean(161.5, 161.6, 161.5), mean(161, 161.1, 161), mean(95.9, 96, 95.9)];
  const massKg = left + right + nose;
  const moment = 640 * left + 640 * right - 970 * nose;

  test('as weighed with its batteries, and by its papers with the batteries exchanged', () => {
    expectLine(documents, SCHEDULE, `${near(massKg, 1)} kg`);
    expectLine(documents, SCHEDULE, `${near(moment / massKg, 1)} mm`);
    // The chord of 1000 mm begins at 60 mm.
    expectLine(documents, SCHEDULE, `${near(((moment / massKg - 60) / 1000) * 100, 1)} % MAC`);
    const [outKg, inKg] = [70.4 + 70.6, 71.2 + 71.3 + 0.6];
    const outMoment = 70.4 * -420 + 70.6 * 1050;
    const inMoment = 71.2 * -420 + 71.3 * 1050 + 0.6 * 300;
    const change = [signed(inKg - outKg, 2), signed(inMoment - outMoment, 0)];
    expectLine(documents, SCHEDULE, 'Batteriepakete', ...change, near(416.1 + inKg - outKg, 2));
    expectLine(documents, SHEET, `${atMost(600 - massKg, 1)} kg`);
  });

  test('energy from full to 15 %, at 98 and 97 % of health and a tenth less in the cold', () => {
    const [front, rear] = [11 * 0.98 * (1 - 0.15) * 0.9, 11 * 0.97 * (1 - 0.15) * 0.9];
    expectLine(documents, SHEET, 'Paket vorn', atMost(front, 1), String(700 - 3));
    expectLine(documents, SHEET, 'Paket hinten', atMost(rear, 1), String(700 - 3));
    const reserveKwh = (16 * 20) / 60;
    expectLine(
      documents,
      SHEET,
      `${atMost(((front + rear - reserveKwh) / 19) * 60, 0)} min`,
      `${near(reserveKwh, 1)} kWh`,
    );
  });

  test('the 14-volt bus lasts, and the traction circuit was dead and is insulated', () => {
    const analysis = /^electrical-load-analysis$/;
    const leftOn = 0.8 + 1.2 + 0.6 + 3;
    expectLine(documents, analysis, near(leftOn, 1));
    // 5 minutes with the lights of 1.5 A, and 10 minutes for the landing, out of 12 Ah × 0.7.
    const left = 12 * 0.7 * 60 - 5 * (leftOn + 1.5) - 10 * leftOn;
    expectLine(documents, analysis, atMost(left / leftOn, 0), near(left, 0));
    expectLine(documents, analysis, '14 MΩ', '500 V', '0.5 MΩ');
    expectLine(documents, analysis, 'Jule Petersen', 'Arne Wikström');
  });

  test('has no fuel, no oil and no baggage', () => {
    const lines = documents.of(EVERY);
    expect(lines.filter((line) => /kraftstoff|(?<!\p{L})öl(?!\p{L})/iu.test(line))).toEqual([
      'Kraftstoff kein Tank',
      'Öl kein Öl',
    ]);
    expect(lines.filter((line) => /gepäck/i.test(line))).toEqual([]);
    expect(lines.filter((line) => /kein Triebwerk/.test(line))).toEqual([]);
  });
});

describe('an aeroplane on floats', async () => {
  const documents = await documentLines('floats');
  const [left, right, bow] = [mean(467.5, 467.5, 468), mean(465.5, 465.5, 465), mean(70.8, 70.6, 70.8)];
  const massLb = left + right + bow;
  const moment = 23.2 * left + 23.2 * right - 62 * bow;
  const fuelLb = 25 * 6;

  test('as weighed on floats, and by its papers with wheels off and floats on', () => {
    expectLine(documents, SCHEDULE, `${near(massLb, 1)} lb`);
    expectLine(documents, SCHEDULE, `${near(moment / massLb, 3)} in`);
    const change = 212 + 27 + 12 + 4 - 46 - 58 - 9;
    const moved = 212 * 15 + 27 * 11 + 12 * 108 + 4 * 172 - 46 * 3.5 - 58 * 4 - 9 * 178;
    expectLine(documents, SCHEDULE, 'Floats fitted', signed(change, 2), signed(moved, 1), near(862 + change, 2));
  });

  test('the schedule on wheels stands, and the one on skis follows from it', () => {
    expectLine(documents, SCHEDULE, 'On wheels', '862.00', near(13792 / 862, 3), '13792.0');
    const [skisLb, skisMoment] = [862 - 42 + 71, 13792 - 42 * 4 + 71 * 6];
    expectLine(documents, SCHEDULE, 'On skis', near(skisLb, 2), near(skisMoment / skisLb, 3), near(skisMoment, 1));
    expectLine(documents, /^loading-sheet-skis$/, `${atMost(1420 - skisLb, 1)} lb`);
    expectLine(documents, /^loading-sheet-wheels$/, `${atMost(1420 - 862 - fuelLb, 1)} lb`);
  });

  test('baggage for two of 220 lb with a quarter of the fuel: what 1500 lb leave', () => {
    expectLine(documents, SHEET, '220.0', atMost(1500 - massLb - 440 - fuelLb / 4, 1));
    expectLine(documents, SCHEDULE, `${atMost(1500 - massLb, 1)} lb`);
  });

  test('on wheels and skis no float locker is mentioned', () => {
    expect(documents.of(/^loading-sheet-(wheels|skis)$/).filter((line) => /locker/i.test(line))).toEqual([]);
  });
});

describe('a four-seat tourer', async () => {
  const documents = await documentLines('four-seat-tourer');
  const fuelKg = (78 + 78 + 59) * 0.72;

  test('by its papers: an update in place and a display on loan move nothing', () => {
    expectLine(documents, SCHEDULE, '702.4 kg');
    expectLine(documents, SCHEDULE, `${near(688352 / 702.4, 1)} mm`);
    expectLine(documents, SCHEDULE, 'Navigator updated', '0.00', '702.40');
    expectLine(documents, /^equipment-list$/, 'Heron Avionics', '30 Sep 2026');
  });

  test('loads by the landing mass, and what may take off beyond it', () => {
    expectLine(documents, SCHEDULE, `${atMost(1110 - 702.4, 1)} kg`);
    // With full tanks nobody sits in the rear, so two in front and 54 kg of baggage are the most.
    const most = Math.min(1160 - 702.4 - fuelKg, 120 + 120 + 54);
    const burnKg = 702.4 + most + fuelKg - 1110;
    const least = [`${near(most, 1)} kg`, `${near(burnKg, 1)} kg`, `${near(fuelKg - burnKg, 1)} kg`];
    expectLine(documents, SCHEDULE, `${atMost(1110 - 702.4 - fuelKg, 1)} kg`);
    expectLine(documents, SCHEDULE, ...least);
  });

  test('the forward limit by its equation, and the utility category with the same empty mass', () => {
    // 890 mm up to 890 kg, then 50 mm for each 100 kg.
    expectLine(documents, SHEET, '1160.0', near(890 + ((1160 - 890) / 100) * 50, 0), '1200');
    expectLine(documents, SHEET, 'Utility', `${atMost(960 - 702.4, 1)} kg`, `${atMost(960 - 702.4 - fuelKg, 1)} kg`);
  });

  test('nobody sits in the rear while the aft tank holds fuel', () => {
    const rows = documents.of(SHEET).filter((line) => /all seats/i.test(line));
    expect(rows.length).toBeGreaterThan(0);
    expect(rows.filter((line) => /yes|\d$/.test(line))).toEqual([]);
  });
});
