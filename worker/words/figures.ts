import type { Language } from './language.ts';

/** How a language writes numbers and dates. */
export interface Figures {
  decimalSign: string;
  /** What stands between groups of three digits. */
  groupSign: string;
  /** Digits before the decimal sign from which they are grouped. */
  groupedFrom: number;
  /** A date from its year, month and day, all as numbers. */
  date(year: string, month: number, day: number): string;
  /** What stands between a date and a time of day. */
  beforeTime: string;
}

const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const;

const twoDigits = (value: number): string => String(value).padStart(2, '0');

/**
 * English packs are read in many countries. So digits are grouped from five on, by a no-break space, which is nowhere a decimal
 * sign (ISO 80000-1, 7.3.1); and the month stands in letters, so that no reader swaps day and month: `3 Nov 2026`.
 */
export const ENGLISH_FIGURES: Figures = {
  decimalSign: '.',
  groupSign: '\u00a0',
  groupedFrom: 5,
  date: (year, month, day) => `${day}\u00a0${MONTHS[month - 1]}\u00a0${year}`,
  beforeTime: ' ',
};

/**
 * Decimal comma, point between groups, from four digits on; the medium date is `dd.MM.y`, and a comma stands before the time. The
 * minus sign is the true one here too, where CLDR has a hyphen.
 *
 * @source Unicode CLDR 44.1, `de`: symbols and minimumGroupingDigits of numbers.json, yMd and dateTimeFormats of ca-gregorian.json (read)
 */
const GERMAN_FIGURES: Figures = {
  decimalSign: ',',
  groupSign: '.',
  groupedFrom: 4,
  date: (year, month, day) => `${twoDigits(day)}.${twoDigits(month)}.${year}`,
  beforeTime: ', ',
};

export const FIGURES: Readonly<Record<Language, Figures>> = { en: ENGLISH_FIGURES, de: GERMAN_FIGURES };
