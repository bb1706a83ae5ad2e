import type { NumberFormat } from '../number-format.ts';

const ENGLISH_MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/**
 * Differences from CLDR in the way a language is written.
 *
 * English packs are read in many countries. So digits are grouped from five on, by a no-break space, which no country
 * reads as a decimal sign (ISO 80000-1, 7.3.1); and the month is in letters after the day, so that no reader swaps
 * them: `3 Nov 2026`.
 */
export const HOUSE_FORMATS: Readonly<Record<string, Partial<NumberFormat>>> = {
  en: {
    groupSign: '\u00a0',
    groupedFrom: 5,
    date: [{ part: 'day', digits: 1 }, '\u00a0', { part: 'month', names: ENGLISH_MONTHS }, '\u00a0', { part: 'year' }],
    beforeTime: ' ',
  },
};
