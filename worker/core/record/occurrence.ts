import * as m from '../text/generated/messages.ts';
import { choice, line, list, part, pastDate, reference } from './field.ts';

/** Events after which manufacturers require a special inspection. */
export const OCCURRENCES = [
  'hard-landing',
  'propeller-strike',
  'sudden-stop',
  'overspeed',
  'over-temperature',
  'overload',
  'lightning',
  'long-parking',
] as const;

export const Occurrence = part(
  'occurrence',
  {
    kind: choice('occurrence_kind', OCCURRENCES),
    on: pastDate('occurrence_on', '2026-10-18', m.occurrence_event, { before: ['visit.workEndedAt'] }),
    text: line('occurrence_text', 'Propeller touched long grass while taxiing'),
    tasks: list('occurrence_tasks', reference('task', 'occurrence_tasks_each', 'T48'), { max: 40 }).optional(),
  },
  'kind',
);

export const Occurrences = list('occurrences', Occurrence, { max: 40 });
