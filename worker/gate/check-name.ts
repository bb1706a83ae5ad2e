import type { Check } from '../calc/surveillance/surveillance-result.ts';
import type { Printer } from '../text/print.ts';
import { phrase } from '../words/words.ts';

/** What is so when a check is passed, in English. */
export const CHECK_NAMES: Readonly<Record<Check['check'], string>> = {
  'own-address-only': phrase`Replies to its own address and not to two others`,
  'altitude-agrees': phrase`Altitude in replies to UF 4 is that of Mode C`,
  'identity-agrees': phrase`Identity in replies to UF 5 is that of Mode 3/A`,
  'communication-formats': phrase`Replies to UF 20, 21 and 24 are right, or it has none`,
  'all-call': phrase`Replies to UF 11 have the right address and capability`,
  'silent-to-mode-a-all-call': phrase`Silent to the Mode A/C-only all-call`,
  squitter: phrase`Sends a correct squitter about once a second`,
  'static-clear': phrase`Free of moisture and restrictions`,
  'static-port-heater': phrase`Port heater works, or none is fitted`,
  'static-surface': phrase`Surface at the port not altered or deformed`,
};

/** A check that has no figure, by what is so when it is passed. */
export function checkName({ check }: Pick<Check, 'check'>, say: Pick<Printer, 'term'>): string {
  return say.term(CHECK_NAMES[check]);
}

/** Checks that the record says nothing of, each with its paragraph. */
export function unrecordedChecks(checks: readonly Check[], say: Pick<Printer, 'term'>): string[] {
  return checks
    .filter(({ outcome }) => outcome === 'not recorded')
    .map((check) => `${check.paragraph} ${checkName(check, say)}`);
}
