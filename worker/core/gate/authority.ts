import { firstDay } from '../record/near.ts';
import type { Place } from '../record/record-index.ts';
import { SCOPES, type Scope } from '../record/scopes.ts';
import { dateOf } from '../units/calendar.ts';

/** What a person must be authorised for at a place of the record, and on which day where that is known. */
export interface OwedAuthority {
  scope: Scope;
  on: string | undefined;
}

/** The authorisation that a place of the record takes; undefined where it takes none. @param at the moment of the assessment */
export function owedAuthority(place: Place<'person'>, at: string): OwedAuthority | undefined {
  const { authority } = place.means;
  const part = place.around.at(-1)?.value ?? {};
  if (!authority || !Object.entries(authority.where ?? {}).every(([field, value]) => part[field] === value))
    return undefined;
  const { scope, on } = authority;
  const stated = typeof scope === 'string' ? scope : SCOPES.find((known) => known === part[scope.field]);
  return stated && { scope: stated, on: on === 'assessment' ? dateOf(at) : firstDay(place, on) };
}
