import type { Segment } from './drawing-shape.ts';

type Attributes = Readonly<Record<string, string>>;

const NUMBERS_OF = { M: 2, L: 2, H: 1, V: 1, C: 6, Z: 0 } as const;

// A circle as four cubic curves: control points at 4/3 (√2 − 1) of the radius, with an error up to 0.03 %.
const ARC = (4 / 3) * (Math.SQRT2 - 1);

function numbers(text: string): number[] {
  const found = text.match(/[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?/gi) ?? [];
  return found.map(Number);
}

function commandSegment(command: keyof typeof NUMBERS_OF, values: readonly number[], at: readonly number[]): Segment {
  const [x = 0, y = 0] = at;
  if (command === 'Z') return { op: 'close' };
  if (command === 'H') return { op: 'line', to: [values[0] ?? 0, y] };
  if (command === 'V') return { op: 'line', to: [x, values[0] ?? 0] };
  return { op: command === 'C' ? 'curve' : command === 'M' ? 'move' : 'line', to: values };
}

/** Parses the segments of path data: M, L, H, V, C and Z, absolute. Throws on other commands. */
export function pathSegments(data: string): Segment[] {
  const segments: Segment[] = [];
  let at: readonly number[] = [0, 0];
  for (const [, letter = '', rest = ''] of data.matchAll(/([a-df-z])([^a-df-z]*)/gi)) {
    if (!(letter in NUMBERS_OF))
      throw new Error(`Cannot typeset path: command must be one of M L H V C Z: current value is ${letter}`);
    const command = letter as keyof typeof NUMBERS_OF;
    const values = numbers(rest);
    const step = NUMBERS_OF[command];
    for (let i = 0; i === 0 || i < values.length; i += Math.max(step, 1)) {
      // Further pairs after a move are lines (SVG 1.1, 8.3.2).
      const segment = commandSegment(command === 'M' && i > 0 ? 'L' : command, values.slice(i, i + step), at);
      segments.push(segment);
      if (segment.op !== 'close') at = segment.to.slice(-2);
    }
  }
  return segments;
}

function polygon(points: readonly number[], closed: boolean): Segment[] {
  const segments: Segment[] = [];
  for (let i = 0; i + 1 < points.length; i += 2) {
    segments.push({ op: i === 0 ? 'move' : 'line', to: points.slice(i, i + 2) });
  }
  return closed ? [...segments, { op: 'close' }] : segments;
}

function circle(x: number, y: number, r: number): Segment[] {
  const k = r * ARC;
  return [
    { op: 'move', to: [x + r, y] },
    { op: 'curve', to: [x + r, y + k, x + k, y + r, x, y + r] },
    { op: 'curve', to: [x - k, y + r, x - r, y + k, x - r, y] },
    { op: 'curve', to: [x - r, y - k, x - k, y - r, x, y - r] },
    { op: 'curve', to: [x + k, y - r, x + r, y - k, x + r, y] },
    { op: 'close' },
  ];
}

/** Returns the segments of a line, polyline, polygon, rectangle or circle. */
export function shapeSegments(name: string, own: Attributes): Segment[] {
  const value = (key: string): number => Number(own[key] ?? 0);
  const [x, y, width, height] = [value('x'), value('y'), value('width'), value('height')];
  switch (name) {
    case 'line':
      return polygon([value('x1'), value('y1'), value('x2'), value('y2')], false);
    case 'polyline':
      return polygon(numbers(own.points ?? ''), false);
    case 'polygon':
      return polygon(numbers(own.points ?? ''), true);
    case 'rect':
      return polygon([x, y, x + width, y, x + width, y + height, x, y + height], true);
    case 'circle':
      return circle(value('cx'), value('cy'), value('r'));
    default:
      throw new Error(`Cannot typeset drawing: <${name}> must not stand in it`);
  }
}
