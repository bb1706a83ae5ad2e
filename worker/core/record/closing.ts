import * as m from '../text/generated/messages.ts';
import { flag, part, person, timestamp } from './field.ts';

/** State in which the work was left. */
export const Closing = part('closing', {
  toolsAccountedFor: flag('inspection_toolsAccountedFor', true),
  panelsClosed: flag('inspection_panelsClosed', true),
  nothingTemporary: flag('closing_nothingTemporary', true).optional(),
  by: person('closing_by', 'mila', m.closing_closed).optional(),
  at: timestamp('closing_at', '2026-11-05T13:55:00+01:00', m.closing_closing).optional(),
});
