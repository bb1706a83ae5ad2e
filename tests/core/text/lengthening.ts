import { type Locale, localeOf } from '../../../worker/core/text/locale.ts';
import type { Form } from '../../../worker/core/text/message.ts';
import { lengthened } from '../../browser/another-language/generated-language.ts';

/** Around what is filled into a message, which stays as it is. */
const [OPEN, CLOSE] = ['\ue000', '\ue001'];

/**
 * The language that is made for tests, without a catalogue of its own: every message of English a third longer and with
 * accents; figures and dates as in German, which writes them longest.
 */
export function lengtheningLocale(): Locale {
  const german = localeOf('de');
  return {
    ...german,
    render({ message, values }, text) {
      const form: Form<never> | undefined = message[0];
      if (typeof form !== 'function') return lengthened(form ?? '');
      const filled = (value: Parameters<typeof text>[0]): string => `${OPEN}${text(value)}${CLOSE}`;
      return form(values as never, { text: filled, plural: localeOf('en').plural })
        .split(new RegExp(`(${OPEN}[^${CLOSE}]*${CLOSE})`))
        .map((part) => (part.startsWith(OPEN) ? part.slice(1, -1) : lengthened(part)))
        .join('');
    },
  };
}
