/** Writes SVG as text: only the elements and attributes that the typesetter draws. */

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');

type Attributes = Readonly<Record<string, string | number | undefined>>;

/** Formats coordinates to a hundredth: enough for print, and the same bytes on every platform. */
const coordinate = (value: number): string => String(Math.round(value * 100) / 100);

function attributes(given: Attributes): string {
  return Object.entries(given)
    .filter(([, value]) => value !== undefined)
    .map(([name, value]) => ` ${name}="${typeof value === 'number' ? coordinate(value) : escaped(value ?? '')}"`)
    .join('');
}

export function element(name: string, given: Attributes, content = ''): string {
  return content ? `<${name}${attributes(given)}>${content}</${name}>` : `<${name}${attributes(given)}/>`;
}

export function text(content: string, given: Attributes): string {
  return `<text${attributes(given)}>${escaped(content)}</text>`;
}

export interface Point {
  x: number;
  y: number;
}

/** Returns the value of a `points` attribute. */
export function points(list: readonly Point[]): string {
  return list.map(({ x, y }) => `${coordinate(x)},${coordinate(y)}`).join(' ');
}

/** Returns a whole drawing, with its alternative text. */
export function drawing(width: number, height: number, widthMm: number, label: string, content: string): string {
  const given = {
    viewBox: `0 0 ${width} ${height}`,
    role: 'img',
    'aria-label': label,
    'data-width-mm': String(widthMm),
  };
  return element('svg', given, content);
}
