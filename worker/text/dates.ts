import { dateOf, offsetOf, timeOf } from '../units/calendar.ts';
import { ENGLISH_FIGURES, type Figures } from '../words/figures.ts';

/** A date as print shows it, in English `3 Nov 2026`. */
export function printDate(date: string, figures: Figures = ENGLISH_FIGURES): string {
  const [year = '', month = '1', day = '1'] = date.split('-');
  return figures.date(year, Number(month), Number(day));
}

/** A moment as print shows it, in English `3 Nov 2026 16:20 +01:00`. */
export function printMoment(moment: string, figures: Figures = ENGLISH_FIGURES): string {
  const offset = offsetOf(moment);
  return `${printDate(dateOf(moment), figures)}${figures.beforeTime}${timeOf(moment)}\u00a0${offset === 'Z' ? 'UTC' : offset.replace('-', '\u2212')}`;
}
