import type { Check } from '../calc/surveillance/surveillance-result.ts';
import * as m from '../text/generated/messages.ts';
import { type Message, said, type Value } from '../text/message.ts';

/** Facts that the checks confirm. */
const CHECK_NAMES: Readonly<Record<Check['check'], Message>> = {
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

/** Name of a check without a figure: the fact that it confirms. */
export function checkName({ check }: Pick<Check, 'check'>): Value {
  return said(CHECK_NAMES[check]);
}

/** Names of checks that are not recorded, with their paragraphs. */
export function unrecordedChecks(checks: readonly Check[]): Value[] {
  return checks
    .filter(({ outcome }) => outcome === 'not recorded')
    .map((check) => said(m.paragraphNamed, { paragraph: check.paragraph, name: checkName(check) }));
}
