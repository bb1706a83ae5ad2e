import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const radioCheckMissing: Rule = {
  code: 'RADIO_CHECK_MISSING',
  severity: 'blocks',
  meaning: 'Radios are recorded, but no two-way check',
  remedy: phrase`Call a station and have it answer`,
  source: PRACTICE,
  check: ({ visit, say }) =>
    visit.surveillance && !visit.surveillance.radioChecks?.length
      ? [{ path: ['surveillance', 'radioChecks'], sentence: say.words`No two-way check of a radio is recorded` }]
      : [],
};
