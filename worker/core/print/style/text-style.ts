import type { FaceName } from '../fonts/face.ts';
import type { Markup, MarkupNode } from '../parse/markup.ts';

/** Style of a run of text. `risePt` lifts it from the baseline. */
export interface TextStyle {
  face: FaceName;
  sizePt: number;
  leadingPt: number;
  risePt: number;
  keepTogether: boolean;
}

/** Text of the body, the base of every other style: 9.5 on 13 points. */
export const BODY: TextStyle = { face: 'regular', sizePt: 9.5, leadingPt: 13, risePt: 0, keepTogether: false };

type Change = (style: TextStyle) => TextStyle;

const semibold: Change = (style) => ({ ...style, face: 'semibold' });
const unchanged: Change = (style) => style;

// Returns raised or lowered figures at seven tenths, lifted to the cap line or hung below the baseline.
const script = (style: TextStyle, riseEm: number): TextStyle => ({
  ...style,
  sizePt: style.sizePt * 0.7,
  risePt: style.risePt + style.sizePt * riseEm,
});

const INLINE: Readonly<Record<string, Change>> = {
  strong: semibold,
  em: (style) => ({ ...style, face: 'italic' }),
  small: (style) => ({ ...style, sizePt: style.sizePt * 0.86 }),
  sub: (style) => script(style, -0.16),
  sup: (style) => script(style, 0.34),
  code: unchanged,
  a: unchanged,
  span: unchanged,
};

/** Whether an element runs within a line of text. */
export function isInline(name: string): boolean {
  return name === 'br' || name in INLINE;
}

/** Whether content is only text, without blocks. */
export function isRunningText(content: readonly MarkupNode[]): boolean {
  return content.every((node) => typeof node === 'string' || isInline(node.name));
}

/** Returns the style within an inline element, from the style around it. */
export function inlineStyle(element: Markup, around: TextStyle): TextStyle {
  const style = (INLINE[element.name] ?? unchanged)(around);
  const { classes } = element;
  const held = classes.has('nowrap') ? { ...style, keepTogether: true } : style;
  return classes.has('out') ? semibold(held) : held;
}

/** Returns the style of a face at a size and leading, enlarged or reduced by a scale. */
export function textStyle(face: FaceName, sizePt: number, leadingPt: number, scale: number): TextStyle {
  return { face, sizePt: sizePt * scale, leadingPt: leadingPt * scale, risePt: 0, keepTogether: false };
}
