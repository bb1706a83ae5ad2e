const TOKEN = /\\[a-zA-Z]+|\\,|[0-9]+(?:\.[0-9]+)?|[-+/^{}()|,]/g;
/** Brackets that only grow differ in nothing from those that do not. */
const SILENT = new Set(['\\left', '\\right', '\\,']);

const CLOSED_BY: Readonly<Record<string, string>> = {
  '(': ')',
  '{': '}',
  '|': '|',
  '\\lfloor': '\\rfloor',
  '\\lceil': '\\rceil',
};

/**
 * The value of TeX without symbols: what a reader with a pocket calculator would get.
 *
 * @throws SyntaxError when something is left over, or is none of what formulas are written with
 * @example computed('\\frac{3}{4} \\cdot 2^{2}')  // 3
 */
export function computed(tex: string): number {
  const tokens = (tex.match(TOKEN) ?? []).filter((token) => !SILENT.has(token));
  if (tex.replaceAll(TOKEN, '').trim() !== '') throw new SyntaxError(`Cannot compute ${tex}`);
  let at = 0;

  const take = (): string => tokens[at++] ?? '';
  const has = (...wanted: string[]): boolean => wanted.includes(tokens[at] ?? '');
  const close = (wanted: string): void => {
    const found = take();
    if (found !== wanted) throw new SyntaxError(`Cannot compute ${tex}: ${wanted} is missing before ${found}`);
  };

  const total = (): number => {
    let value = product();
    while (has('+', '-', '\\oplus')) {
      const sign = take();
      const next = product();
      value = sign === '\\oplus' ? value ^ next : sign === '+' ? value + next : value - next;
    }
    return value;
  };

  const product = (): number => {
    let value = signed();
    while (has('\\cdot', '/')) value = take() === '/' ? value / signed() : value * signed();
    return value;
  };

  const signed = (): number => {
    if (!has('-')) return power();
    take();
    return -signed();
  };

  const power = (): number => {
    const base = atom();
    if (!has('^')) return base;
    take();
    if (tokens.slice(at, at + 3).join('') === '{\\circ}') {
      at += 3;
      return (base * Math.PI) / 180;
    }
    return base ** atom();
  };

  const list = (): number[] => {
    close('(');
    const values = [total()];
    while (has(',')) {
      take();
      values.push(total());
    }
    close(')');
    return values;
  };

  const atom = (): number => {
    const token = take();
    const closing = CLOSED_BY[token];
    if (closing !== undefined) {
      const value = total();
      close(closing);
      if (token === '|') return Math.abs(value);
      if (token === '\\lceil') return Math.ceil(value);
      return token === '\\lfloor' ? Math.floor(value) : value;
    }
    switch (token) {
      case '\\frac':
        return atom() / atom();
      case '\\sqrt':
        return Math.sqrt(atom());
      case '\\sin':
        return Math.sin(atom());
      case '\\cos':
        return Math.cos(atom());
      case '\\tan':
        return Math.tan(atom());
      case '\\arctan':
        return Math.atan(atom());
      case '\\max':
        return Math.max(...list());
      case '\\min':
        return Math.min(...list());
      case '\\pi':
        return Math.PI;
      default:
        if (!/^\d/.test(token)) throw new SyntaxError(`Cannot compute ${tex}: ${token} is unknown`);
        return Number(token);
    }
  };

  const value = total();
  if (at < tokens.length) throw new SyntaxError(`Cannot compute ${tex}: ${tokens.slice(at).join(' ')} is left over`);
  return value;
}
