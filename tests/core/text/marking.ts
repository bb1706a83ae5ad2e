import { type Locale, localeOf } from '../../../worker/core/text/locale.ts';
import type { Form } from '../../../worker/core/text/message.ts';

/**
 * A language in which every message of ours is marked, and what is filled into it is not: what stands outside the marks came from no
 * catalogue, so no language can translate it.
 */
export function markingLocale(): Locale {
  const german = localeOf('de');
  return {
    ...german,
    render({ message, values }, text) {
      const form: Form<never> | undefined = message[0];
      const speech = { text: (value: Parameters<typeof text>[0]) => `⟧${text(value)}⟦`, plural: german.plural };
      return `⟦${typeof form === 'function' ? form(values as never, speech) : form}⟧`;
    },
  };
}

/** What stands outside the marks. */
export function unmarked(text: string): string {
  return text.replace(/⟦[^⟦⟧]*⟧/g, ' ');
}
