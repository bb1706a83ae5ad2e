import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { choice, flag, identifier, line, list, part, person, reference, timestamp } from './field.ts';
import { SCOPES } from './scopes.ts';

export const SecondInspection = part('Second inspection', 'Independent inspection by another person', {
  by: person('By', 'Person, not one who did the task', 'jonas', m.inspection_inspectedTaskIndependently, {
    scope: 'independent-inspection',
    on: ['at'],
  }),
  at: timestamp('At', 'When', '2026-11-05T13:10:00+01:00', m.inspection_secondInspectionTask),
  method: line('Method', 'How it was checked', 'Visual, full and free travel, direction seen from the seat').optional(),
});

export const Task = part('Task', 'A line of the inspection record', {
  id: identifier(['task'], 'Identifier', 'How the record names this task', 'T12'),
  zone: line('Zone', 'Group of the inspection programme', 'Engine and nacelle', 60),
  text: line('Text', 'What was inspected or done', 'Oil and filter changed, filter cut open'),
  reference: line('Reference', 'Programme or manual reference', 'MM 12-20').optional(),
  kind: choice('Kind of work', 'What authorisation it takes', SCOPES).optional(),
  result: choice('Result', 'Outcome', ['satisfactory', 'rectified', 'failed', 'not-applicable', 'open'] as const),
  value: line('Value', 'Measured value with its limit', '4.1 mm, limit 3.0 mm min.').optional(),
  finding: reference('finding', 'Finding', 'Finding that a failed task led to', 'F2').optional(),
  by: person('By', 'Person who did it', 'mila', m.inspection_didTask, {
    scope: { field: 'kind' },
    on: ['at'],
  }).optional(),
  at: timestamp('At', 'When', '2026-11-05T11:00:00+01:00', m.inspection_task).optional(),
  critical: flag('Critical', 'Whether a second inspection is owed, as after work on controls', true).optional(),
  secondInspection: SecondInspection.optional(),
});

export const Inspection = part('Inspection', 'The inspection or service done', {
  kind: line('Kind', 'Kind of inspection', '100-hour inspection'),
  programme: line('Programme', 'Programme and revision that it followed', 'Maker’s schedule rev. 6').optional(),
  tasks: list('Tasks', 'Every task', Task, { min: 1, max: 1000 }),
  toolsAccountedFor: flag('Tools accounted for', 'All tools and parts counted back', true).optional(),
  panelsClosed: flag('Panels closed', 'All panels and covers refitted', true).optional(),
});
export type Inspection = z.infer<typeof Inspection>;
