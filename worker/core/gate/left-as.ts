import * as m from '../text/generated/messages.ts';
import { said, type Value } from '../text/message.ts';
import { termOf } from '../text/terms.ts';

/** How a finding was left, in a sentence. */
export function leftAs(disposition: string): Value {
  return disposition === 'monitor' ? said(m.airworthinessFindingDeclined_leftWatched) : termOf(disposition);
}
