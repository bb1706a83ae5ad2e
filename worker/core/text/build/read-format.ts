import type { DatePart, NumberFormat } from '../number-format.ts';

/** Version of Unicode CLDR that numbers, dates and plural forms follow. */
export const CLDR_VERSION = '48.0';

/**
 * Reads the number and date formats of a language from the CLDR data of this Node, at build time; later nothing depends
 * on a runtime.
 *
 * @throws Error when this Node has another version of CLDR
 */
export function readFormat(tag: string): NumberFormat {
  const { cldr } = process.versions;
  if (cldr !== CLDR_VERSION)
    throw new Error(
      `Cannot build: formats are those of CLDR ${CLDR_VERSION}, and this Node has ${cldr}; use \`npx node\``,
    );
  const numbers = new Intl.NumberFormat(tag, { numberingSystem: 'latn' });
  const signOf = (value: number, type: Intl.NumberFormatPartTypes): string | undefined =>
    numbers.formatToParts(value).find((part) => part.type === type)?.value;
  const groupedFrom = [4, 5].find((digits) => signOf(10 ** (digits - 1), 'group') !== undefined) ?? 4;
  return {
    decimalSign: signOf(1.5, 'decimal') ?? '.',
    groupSign: signOf(100_000, 'group') ?? '\u00a0',
    groupedFrom,
    date: datePartsOf(tag),
    beforeTime: beforeTimeOf(tag),
  };
}

const UTC = { timeZone: 'UTC', calendar: 'gregory', numberingSystem: 'latn' } as const;

function partsOf(tag: string, month: number): Intl.DateTimeFormatPart[] {
  return new Intl.DateTimeFormat(tag, { dateStyle: 'medium', ...UTC }).formatToParts(Date.UTC(2026, month, 3));
}

function datePartsOf(tag: string): DatePart[] {
  const names = Array.from(
    { length: 12 },
    (_, month) => partsOf(tag, month).find(({ type }) => type === 'month')?.value ?? '',
  );
  return partsOf(tag, 0).map(({ type, value }): DatePart => {
    if (type === 'year') return { part: 'year' };
    if (type === 'month') return { part: 'month', names };
    if (type === 'day') return { part: 'day', digits: value.length === 2 ? 2 : 1 };
    return value === ' ' ? '\u00a0' : value;
  });
}

function beforeTimeOf(tag: string): string {
  const parts = new Intl.DateTimeFormat(tag, {
    dateStyle: 'medium',
    timeStyle: 'short',
    hour12: false,
    ...UTC,
  }).formatToParts(0);
  const hour = parts.findIndex(({ type }) => type === 'hour');
  return parts[hour - 1]?.value ?? ' ';
}
