import { describe, expect, test } from 'vitest';
import type { ReleaseClock } from '../../../../worker/core/calc/clock/release-clock.ts';
import { reduceSwing } from '../../../../worker/core/calc/compass/swing.ts';
import type { RunComparison } from '../../../../worker/core/calc/engine/engine-runs.ts';
import { clockChart } from '../../../../worker/core/pack/chart/clock-chart.ts';
import { deviationChart } from '../../../../worker/core/pack/chart/deviation-chart.ts';
import { envelopeDrawing } from '../../../../worker/core/pack/chart/envelope-drawing.ts';
import { historyChart } from '../../../../worker/core/pack/chart/history-chart.ts';
import { loadChart } from '../../../../worker/core/pack/chart/load-chart.ts';
import { runsChart } from '../../../../worker/core/pack/chart/runs-chart.ts';
import { formatterFor } from '../../../../worker/core/text/formatter.ts';

const SAY = formatterFor({ mass: 'kg', arm: 'mm', volume: 'l' });

type Attributes = Record<string, number>;

/** Numeric attributes of every element of a name, in order. */
function elements(svg: string, name: string): Attributes[] {
  return [...svg.matchAll(new RegExp(`<${name} ([^>]*)>`, 'g'))].map(([, given = '']) =>
    Object.fromEntries([...given.matchAll(/([\w-]+)="([^"]*)"/g)].map(([, key = '', value]) => [key, Number(value)])),
  );
}

const comparison = (given: Partial<RunComparison>): RunComparison => ({
  name: 'Oil pressure',
  unit: 'bar',
  before: undefined,
  after: undefined,
  change: undefined,
  least: undefined,
  most: undefined,
  isWithin: true,
  isChanged: false,
  ...given,
});

describe('envelopeDrawing()', () => {
  // A sailplane: the empty aircraft lies behind everything that is flown in it.
  const corners = [
    { armMm: 250, massKg: 300 },
    { armMm: 250, massKg: 525 },
    { armMm: 420, massKg: 525 },
    { armMm: 420, massKg: 300 },
  ];

  test('names the empty aircraft inside the drawing, wherever it lies', () => {
    for (let armMm = 100; armMm < 700; armMm += 3) {
      const empty = { massKg: 270, momentKgMm: 270 * armMm };
      const svg = envelopeDrawing({ corners, maximumMassKg: 525, empty, ways: [], fmt: SAY, label: 'x' });
      const [, attributes = ''] = /<text ([^>]*)>empty</.exec(svg) ?? [];
      const x = Number(/ ?x="([^"]*)"/.exec(attributes)?.[1]);
      // Five letters of ten units are at most 29 wide; the drawing is 420.
      const [left, right] = attributes.includes('text-anchor="end"') ? [x - 29, x] : [x, x + 29];
      expect(left, `${armMm} mm`).toBeGreaterThanOrEqual(0);
      expect(right, `${armMm} mm`).toBeLessThanOrEqual(420);
    }
  });
});

describe('loadChart()', () => {
  const bar = (name: string, peakA: number, capacityA?: number) => ({ name, loadA: 2, peakA, capacityA });

  test('breaks a bar that is longer than drawn, and no other', () => {
    const slanted = (svg: string) => elements(svg, 'line').filter(({ x1, x2 }) => x1 !== x2);
    expect(slanted(loadChart([bar('Start', 19), bar('Cruise', 9, 20)], SAY))).toEqual([]);
    const broken = loadChart([bar('Start', 111.9), bar('Cruise', 9, 20)], SAY);
    const [rect] = elements(broken, 'rect');
    const end = (rect?.x ?? 0) + (rect?.width ?? 0);
    for (const { x1 = 0, y1 = 0, x2 = 0, y2 = 0 } of slanted(broken)) {
      expect(Math.max(x1, x2)).toBeLessThan(end);
      // Right across the first bar, whose row ends where the next begins.
      expect([Math.min(y1, y2) < (rect?.y ?? 0), Math.max(y1, y2) > (rect?.y ?? 0) + (rect?.height ?? 0)]).toEqual([
        true,
        true,
      ]);
      expect(Math.max(y1, y2)).toBeLessThan(elements(broken, 'rect')[2]?.y ?? 0);
    }
    expect(slanted(broken).length).toBeGreaterThan(0);
  });
});

describe('deviationChart()', () => {
  const pure = Array.from({ length: 8 }, (_, index) => {
    const headingDeg = index * 45;
    return { headingDeg, compassDeg: headingDeg - 5 * Math.sin((headingDeg * Math.PI) / 180) };
  });
  const swings = reduceSwing({
    reference: 'magnetic',
    swings: [{ state: 'equipment-on', readings: pure }],
  } as never).swings;

  test('puts every reading over its heading, and the curve of a pure sine through all of them', () => {
    const svg = deviationChart(swings, SAY);
    const dots = elements(svg, 'circle');
    expect(dots.length).toBe(8);
    const steps = dots.slice(1).map(({ cx = 0 }, index) => cx - (dots[index]?.cx ?? 0));
    for (const step of steps) expect(step).toBeCloseTo(steps[0] ?? 0, 1);
    const curve = (/<polyline points="([^"]*)"/.exec(svg)?.[1] ?? '')
      .split(' ')
      .map((pair) => pair.split(',').map(Number));
    for (const { cx = 0, cy = 0 } of dots) {
      const [, y = 0] = curve.find(([x = 0]) => Math.abs(x - cx) < 0.02) ?? [];
      expect(y).toBeCloseTo(cy, 1);
    }
    // East is up: the reading on 090 stands highest, the one on 270 lowest.
    const heights = dots.map(({ cy = 0 }) => cy);
    expect(heights.indexOf(Math.min(...heights))).toBe(2);
    expect(heights.indexOf(Math.max(...heights))).toBe(6);
  });
});

describe('runsChart()', () => {
  test('puts a value that meets a limit on its stroke, and one between them between', () => {
    const [limit] = [comparison({ before: 2, after: 3.5, least: 2, most: 5 })];
    const svg = runsChart([limit], SAY);
    const [least, most] = elements(svg, 'line').filter(({ x1, x2 }) => x1 === x2);
    const [before, after] = elements(svg, 'circle');
    expect(before?.cx).toBe(least?.x1);
    expect(after?.cx).toBeCloseTo(((least?.x1 ?? 0) + (most?.x1 ?? 0)) / 2, 1);
  });

  test('keeps a value far outside its limits on the sheet, beyond the stroke', () => {
    const svg = runsChart([comparison({ after: 900, least: 2, most: 5 })], SAY);
    const most = elements(svg, 'line').filter(({ x1, x2 }) => x1 === x2)[1];
    const [after] = elements(svg, 'circle');
    expect(after?.cx).toBeGreaterThan(most?.x1 ?? Number.POSITIVE_INFINITY);
    expect(after?.cx).toBeLessThanOrEqual(420);
  });
});

describe('historyChart()', () => {
  test('has a dot a step, higher for a greater value', () => {
    const dots = elements(historyChart('empty mass', 'kg', [322, 328, 325], SAY), 'circle');
    expect(dots.map(({ cy = 0 }) => cy).map((y, _, all) => all.filter((other) => other > y).length)).toEqual([0, 2, 1]);
  });

  test('is drawn for values that are all the same', () => {
    expect(historyChart('arm', 'mm', [1650, 1650], SAY)).not.toContain('NaN');
  });
});

describe('clockChart()', () => {
  const clock: ReleaseClock = {
    plan: {
      jobs: [
        { id: 'J1', text: 'Swing', by: 'p1', startMin: 0, endMin: 40, isCritical: true },
        { id: 'J2', text: 'Papers', by: 'p2', startMin: 40, endMin: 60, isCritical: false },
      ],
      totalMin: 60,
      next: undefined,
      circle: [],
    },
    readyAt: '2026-11-05T15:20:00Z',
    slackMin: 30,
    arrivalAt: undefined,
    sunsetAt: undefined,
    daylightMin: undefined,
    isDarkAtArrival: undefined,
  };

  test('sets bars in time, and the latest take-off after the last of them by the slack', () => {
    const svg = clockChart(clock, SAY);
    const [first, second] = elements(svg, 'rect');
    expect((first?.width ?? 0) / (second?.width ?? 1)).toBeCloseTo(2, 1);
    expect(second?.x).toBeCloseTo((first?.x ?? 0) + (first?.width ?? 0), 1);
    const latest = elements(svg, 'line').at(-1);
    const end = (second?.x ?? 0) + (second?.width ?? 0);
    expect((latest?.x1 ?? 0) - end).toBeCloseTo(((first?.width ?? 0) * 30) / 40, 0);
  });

  test('has no line for a take-off that is past', () => {
    const chart = (slackMin: number): string => clockChart({ ...clock, slackMin }, SAY);
    expect(chart(30)).toContain('stroke-dasharray');
    expect(chart(-90)).not.toContain('stroke-dasharray');
  });
});
