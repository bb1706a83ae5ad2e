import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { choice, digest, identifier, line, list, part, person, reference, timestamp } from './field.ts';

export const Attachment = part('attachment', {
  id: identifier(['attachment'], 'attachment_id', 'A1'),
  kind: choice('attachment_kind', ['photograph', 'paper'] as const),
  title: line('attachment_title', 'Release certificate RC-88213, transponder', 120),
  sha256: digest('attachment_sha256'),
  concerns: reference(
    ['finding', 'modification', 'part', 'task', 'bulletin', 'found-wire'],
    'attachment_concerns',
    'F3',
    { called: m.attachment_entryAttachmentCanBelong },
  ).optional(),
  takenAt: timestamp('attachment_takenAt', '2026-11-03T11:05:00+01:00', m.attachment_photograph, {
    early: 'The owner may have taken it before the visit, to show what was wrong',
    late: 'It may show the aircraft as it was handed over',
  }).optional(),
  by: person('attachment_by', 'mila', m.attachment_tookReceived).optional(),
});
export type Attachment = z.infer<typeof Attachment>;

export const Attachments = list('attachments', Attachment, { max: 60 });
