import * as m from '../../../text/generated/messages.ts';
import { geometryHits } from '../../geometry.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const geometryUnusual: Rule = {
  code: 'GEOMETRY_UNUSUAL',
  severity: 'caution',
  meaning: 'Length, chord or empty centre of gravity is unusual for a light aircraft',
  remedy: m.geometryUnusual_remedy,
  source: PRACTICE,
  check: ({ visit, results }) => geometryHits(visit, results, 'unusual'),
};
