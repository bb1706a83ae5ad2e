import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { choice, id, line, list, number, part, person, prose, reference } from './field.ts';

const RELEASES = { scope: 'release', on: 'assessment' } as const;

/** Grounds on which a caution may be accepted. */
export const GROUNDS = [
  'cause-found',
  'measured-again',
  'allowed-by-type',
  'no-effect',
  'done-later',
  'not-possible',
] as const;

export const Acknowledgement = part('acknowledgement', {
  code: line('acknowledgement_code', 'PREDICTION_DIFFERS', 60),
  by: person('acknowledgement_by', 'jonas', m.release_acceptsCaution, RELEASES),
  ground: choice('acknowledgement_ground', GROUNDS).optional(),
  reason: line('acknowledgement_reason', 'Upholstery renewed in 2021 without an entry; list corrected'),
  figures: list('acknowledgement_figures', number('acknowledgement_figures_each', 'as stated', 13.5), {
    max: 200,
  }).optional(),
});

/** Another statement of the same release, for another part of the work. */
export const FurtherStatement = part('furtherStatement', {
  statement: id('furtherStatement_statement', 'condition-inspection'),
  scope: prose('furtherStatement_scope', 'Condition inspection after the programme of the workshop.'),
});

export const FlightTestAfterRelease = part(
  'flightTestAfterRelease',
  {
    modification: reference('modification', 'flightTestAfterRelease_modification', 'M1'),
    flownBy: line('flightTestAfterRelease_flownBy', 'Test pilot named by the owner, alone', 80),
    limitation: line('flightTestAfterRelease_limitation', 'Within 10 NM of the field, by day, before any other flight'),
  },
  'modification',
);

export const Release = part('release', {
  by: person('release_by', 'jonas', m.release_releasesAircraft, RELEASES),
  statement: id('release_statement', 'work-complete'),
  scope: prose('release_scope', 'Modifications M1 to M4 and the 100-hour inspection.'),
  reasonForIssue: line('release_reasonForIssue', 'Arm of the radio was mistyped; schedule calculated again').optional(),
  further: list('release_further', FurtherStatement, { max: 6 }).optional(),
  limitations: list('release_limitations', line('release_limitations_each', 'Day VFR only until F3 is closed'), {
    max: 40,
  }).optional(),
  flightTestsAfterRelease: list('flightTestAfterRelease', FlightTestAfterRelease, { max: 60 }).optional(),
  acknowledgements: list('release_acknowledgements', Acknowledgement, { max: 60 }).optional(),
});
export type Release = z.infer<typeof Release>;
