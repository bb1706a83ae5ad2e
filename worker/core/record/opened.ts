import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { AXES } from './control-check.ts';
import { choice, identifier, line, list, part, person, reference, timestamp } from './field.ts';

/** Systems and places that work can open; controls that were undone are in `controls.disturbed`. */
export const OPENED_SYSTEMS = [
  'static-line',
  'pitot-line',
  'fuel',
  'oil',
  'coolant',
  'exhaust',
  'induction',
  'ignition',
  'engine',
  'propeller',
  'rotor',
  'brake',
  'undercarriage',
  'electrical-connection',
  'antenna-connection',
  'wing-joint',
  'structure',
  'control-space',
  'rescue-system',
  'oxygen',
] as const;
export type OpenedSystem = (typeof OPENED_SYSTEMS)[number];

/** What was opened for the work, and when it was closed again. */
export const Opened = part('opened', {
  id: identifier(['opening'], 'opened_id', 'O1'),
  system: choice('opened_system', OPENED_SYSTEMS),
  what: line('opened_what', 'Static line at the encoder'),
  item: reference('equipment-item', 'opened_item', 'E05').optional(),
  passes: list('opened_passes', choice('opened_passes_each', AXES), { max: AXES.length }).optional(),
  openedAt: timestamp('opened_openedAt', '2026-11-04T10:10:00+01:00', m.opened_opening).optional(),
  closedAt: timestamp('opened_closedAt', '2026-11-04T17:20:00+01:00', m.opened_closing, { after: ['openedAt'] }),
  by: person('opened_by', 'mila', m.opened_closed),
});
export type Opened = z.infer<typeof Opened>;

export const OpenedList = list('openedList', Opened, { max: 120 });
