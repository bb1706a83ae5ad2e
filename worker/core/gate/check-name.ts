import type { Check } from '../calc/surveillance/surveillance-result.ts';
import * as m from '../text/generated/messages.ts';
import { type Message, said, type Value } from '../text/message.ts';

/** What is so when a check is passed. */
export const CHECK_NAMES: Readonly<Record<Check['check'], Message>> = {
  'own-address-only': m.checkName_repliesOwnAddressNot,
  'altitude-agrees': m.checkName_altitudeRepliesUf4,
  'identity-agrees': m.checkName_identityRepliesUf5,
  'communication-formats': m.checkName_repliesUf2021,
  'all-call': m.checkName_repliesUf11Right,
  'silent-to-mode-a-all-call': m.checkName_silentModeCOnly,
  squitter: m.checkName_sendsCorrectSquitterAbout,
  'static-clear': m.checkName_freeMoistureRestrictions,
  'static-port-heater': m.checkName_portHeaterWorksNone,
  'static-surface': m.checkName_surfacePortNotAltered,
};

/** A check that has no figure, by what is so when it is passed. */
export function checkName({ check }: Pick<Check, 'check'>): Value {
  return said(CHECK_NAMES[check]);
}

/** Checks that the record says nothing of, each with its paragraph. */
export function unrecordedChecks(checks: readonly Check[]): Value[] {
  return checks
    .filter(({ outcome }) => outcome === 'not recorded')
    .map((check) => said(m.paragraphNamed, { paragraph: check.paragraph, name: checkName(check) }));
}
