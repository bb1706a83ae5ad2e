/** Number and date formats of a language. */
export interface NumberFormat {
  decimalSign: string;
  /** Separator of groups of three digits. */
  groupSign: string;
  /** Min. number of digits before the decimal sign that are grouped. */
  groupedFrom: number;
  /** A date: literal text, and `y`, `M` (a name or two digits by the month), `d` (digits of the day). */
  date: readonly DatePart[];
  /** Separator of a date and a time of day. */
  beforeTime: string;
}

export type DatePart =
  | string
  | { part: 'year' }
  | { part: 'month'; names: readonly string[] }
  | { part: 'day'; digits: 1 | 2 };

/** Formats a date. */
export function writeDate(parts: readonly DatePart[], year: string, month: number, day: number): string {
  return parts
    .map((part) => {
      if (typeof part === 'string') return part;
      if (part.part === 'year') return year;
      return part.part === 'month' ? part.names[month - 1] : String(day).padStart(part.digits, '0');
    })
    .join('');
}
