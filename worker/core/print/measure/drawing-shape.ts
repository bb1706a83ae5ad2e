/** A colour as red, green and blue from 0 to 1. */
export type Colour = readonly [red: number, green: number, blue: number];

/** A path segment with its points in the drawing's own plane. */
export type Segment = { op: 'move' | 'line' | 'curve'; to: readonly number[] } | { op: 'close' };

/** A part of a drawing in the drawing's own plane, y down. */
export type Shape =
  | {
      kind: 'path';
      segments: readonly Segment[];
      stroke: Colour | null;
      fill: Colour | null;
      strokeWidth: number;
      dash: readonly number[];
    }
  | {
      kind: 'text';
      x: number;
      y: number;
      text: string;
      size: number;
      semibold: boolean;
      fill: Colour;
    };
