import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { choice, flag, identifier, line, list, number, part, person, reference, timestamp } from './field.ts';
import { SCOPES } from './scopes.ts';
import { usedParts } from './used-parts.ts';

export const SecondInspection = part('secondInspection', {
  by: person('secondInspection_by', 'jonas', m.inspection_inspectedTaskIndependently, {
    scope: 'independent-inspection',
    on: ['at'],
  }),
  at: timestamp('secondInspection_at', '2026-11-05T13:10:00+01:00', m.inspection_secondInspectionTask),
  method: line('secondInspection_method', 'Visual, full and free travel, direction seen from the seat').optional(),
});

/** A measured value with its limits, which the release check compares. */
export const TaskReading = part('taskReading', {
  value: number('taskReading_value', 'taskReading.unit', 4.1),
  unit: line('taskReading_unit', 'mm', 20),
  least: number('taskReading_least', 'taskReading.unit', 3).optional(),
  most: number('taskReading_most', 'taskReading.unit', 5).optional(),
});

export const Task = part('task', {
  id: identifier(['task'], 'task_id', 'T12'),
  zone: line('task_zone', 'Engine and nacelle', 60),
  text: line('task_text', 'Oil and filter changed, filter cut open'),
  reference: line('task_reference', 'MM 12-20').optional(),
  kind: choice('task_kind', SCOPES).optional(),
  result: choice('task_result', ['satisfactory', 'rectified', 'failed', 'not-applicable', 'open'] as const),
  value: line('task_value', '4.1 mm, limit 3.0 mm min.').optional(),
  reading: TaskReading.optional(),
  finding: reference('finding', 'task_finding', 'F2').optional(),
  parts: usedParts(),
  by: person('task_by', 'mila', m.inspection_didTask, {
    scope: { field: 'kind' },
    on: ['at'],
  }).optional(),
  at: timestamp('task_at', '2026-11-05T11:00:00+01:00', m.inspection_task).optional(),
  duringRun: flag('task_duringRun', false).optional(),
  critical: flag('task_critical', true).optional(),
  secondInspection: SecondInspection.optional(),
});

export const Inspection = part('inspection', {
  kind: line('inspection_kind', '100-hour inspection'),
  extent: choice('inspection_extent', ['whole-aircraft', 'part'] as const).optional(),
  programme: line('inspection_programme', 'Maker’s schedule rev. 6').optional(),
  tasks: list('inspection_tasks', Task, { min: 1, max: 1000 }),
  toolsAccountedFor: flag('inspection_toolsAccountedFor', true).optional(),
  panelsClosed: flag('inspection_panelsClosed', true).optional(),
});
export type Inspection = z.infer<typeof Inspection>;
