import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { choice, digest, identifier, line, list, part, person, reference, timestamp } from './field.ts';

export const Attachment = part('Attachment', 'A photograph that is shown in the pack, or a paper appended to it', {
  id: identifier(['attachment'], 'Identifier', 'How the record names this attachment', 'A1'),
  kind: choice('Kind', 'A JPEG or PNG picture, or a PDF', ['photograph', 'paper'] as const),
  title: line('Title', 'What it shows or what it is', 'Release certificate RC-88213, transponder', 120),
  sha256: digest('Digest', 'SHA-256 of the file, by which it is handed in'),
  concerns: reference(
    ['finding', 'modification', 'part', 'task', 'bulletin', 'found-wire'],
    'Concerns',
    'Finding, modification, part, task, bulletin or found wire that it belongs to',
    'F3',
    { called: m.attachment_entryAttachmentCanBelong },
  ).optional(),
  takenAt: timestamp('Taken', 'When the photograph was taken', '2026-11-03T11:05:00+01:00', m.attachment_photograph, {
    early: 'The owner may have taken it before the visit, to show what was wrong',
    late: 'It may show the aircraft as it was handed over',
  }).optional(),
  by: person('By', 'Person who took it, or received the paper', 'mila', m.attachment_tookReceived).optional(),
});
export type Attachment = z.infer<typeof Attachment>;

export const Attachments = list('Attachments', 'Photographs and papers that go into the pack', Attachment, { max: 60 });
