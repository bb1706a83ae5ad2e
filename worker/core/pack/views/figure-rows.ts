import type { Check, LimitCheck } from '../../calc/surveillance/surveillance-result.ts';
import { checkName } from '../../gate/check-name.ts';
import { figureName } from '../../gate/figure-name.ts';
import { brokenLimit, rangeText } from '../../gate/range-text.ts';
import { DASH } from '../../text/dash.ts';
import type { Formatter } from '../../text/formatter.ts';
import * as m from '../../text/generated/messages.ts';
import type { Message } from '../../text/message.ts';

/** Returns rows of figures with their limits, and the terms of a difference. */
export function limitedRows(
  fmt: Formatter,
  figures: readonly LimitCheck[],
  decimals: number,
): Record<string, string>[] {
  const places = (value: number): number => (Number.isInteger(value) ? decimals : Math.max(decimals, 1));
  const print = (value: number): string => fmt.plain(value, places(value));
  return figures.map((figure) => ({
    name: fmt.value(figureName(figure)),
    working: figure.terms ? `${print(figure.terms.read)} − ${bracketed(figure.terms.against, print)}` : DASH,
    value: figure.isWithin
      ? print(figure.value)
      : fmt.plainApart(figure.value, brokenLimit(figure), places(figure.value))[0],
    limits: fmt.value(rangeText(figure)),
    unit: figure.unit,
    verdict: figure.isWithin ? '✓' : fmt.text(m.outside),
  }));
}

/** Returns a subtrahend, in brackets if it is signed. */
function bracketed(value: number, print: (value: number) => string): string {
  return value < 0 ? `(${print(value)})` : print(value);
}

const OUTCOMES: Record<Exclude<Check['outcome'], 'passed'>, Message> = {
  failed: m.failed,
  'not recorded': m.figureRows_notRecorded,
};

/** Returns rows of checks without a figure. */
export function checkRows(fmt: Formatter, checks: readonly Check[]): Record<string, string>[] {
  return checks.map((check) => ({
    name: fmt.value(checkName(check)),
    paragraph: check.paragraph,
    verdict: check.outcome === 'passed' ? '✓' : fmt.text(OUTCOMES[check.outcome]),
  }));
}
