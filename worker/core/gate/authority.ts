import { firstDay } from '../record/near.ts';
import type { Place } from '../record/record-index.ts';
import { SCOPES, type Scope } from '../record/scopes.ts';
import { dateOf } from '../units/calendar.ts';

/** Authorisation that a field of the record requires; `on` is the day of use, if known. */
export interface OwedAuthority {
  scope: Scope;
  on: string | undefined;
}

/** Finds the authorisation that a field requires, if any. @param at time of the assessment */
export function owedAuthority(place: Place<'person'>, at: string): OwedAuthority | undefined {
  const { authority } = place.means;
  const part = place.around.at(-1)?.value ?? {};
  if (!authority || !Object.entries(authority.where ?? {}).every(([field, value]) => part[field] === value))
    return undefined;
  const { scope, on } = authority;
  const stated = typeof scope === 'string' ? scope : SCOPES.find((known) => known === part[scope.field]);
  return stated && { scope: stated, on: on === 'assessment' ? dateOf(at) : firstDay(place, on) };
}
