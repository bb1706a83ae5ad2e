/** Greys of every chart: distinguishable on any printer. */
export const INK = '#1a1a1a';
export const SHADE = '#707070';
export const PALE = '#d0d0d0';
export const GRID = '#d9d9d9';
export const PAPER = '#ffffff';
export const AREA = '#efefef';
