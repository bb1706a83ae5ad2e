import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const variationMissing: Rule = {
  code: 'VARIATION_MISSING',
  severity: 'blocks',
  meaning: 'Headings were true, but the record has no position for the magnetic variation',
  remedy: m.variationMissing_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    visit.compass?.reference === 'true' && !visit.compass.position
      ? {
          path: ['compass', 'position'],
          sentence: said(m.variationMissing_headingsTrueWithoutPosition),
        }
      : undefined,
};
