import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { id, line, list, part, person, prose } from './field.ts';

const RELEASES = { scope: 'release', on: 'assessment' } as const;

export const Acknowledgement = part('Acknowledgement', 'A caution read and accepted by a named person', {
  code: line('Code', 'Code of the caution', 'PREDICTION_DIFFERS', 60),
  by: person('By', 'Person who accepts it', 'jonas', m.release_acceptsCaution, RELEASES),
  reason: line('Reason', 'Why it is acceptable', 'Upholstery renewed in 2021 without an entry; list corrected'),
});

export const Release = part('Release', 'What the releasing person is asked to sign', {
  by: person('By', 'Person who releases', 'jonas', m.release_releasesAircraft, RELEASES),
  statement: id('Statement', 'Statement of the regime', 'work-complete'),
  scope: prose('Scope', 'The work that the release covers', 'Modifications M1 to M4 and the 100-hour inspection.'),
  limitations: list(
    'Limitations',
    'Limitations under which the aircraft is released',
    line('Limitation', 'A limitation', 'Day VFR only until F3 is closed'),
    { max: 40 },
  ).optional(),
  acknowledgements: list('Acknowledgements', 'Cautions accepted', Acknowledgement, { max: 60 }).optional(),
});
export type Release = z.infer<typeof Release>;
