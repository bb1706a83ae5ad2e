import * as m from '../../../text/generated/messages.ts';
import { geometryHits } from '../../geometry.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const geometryImpossible: Rule = {
  code: 'GEOMETRY_IMPOSSIBLE',
  severity: 'blocks',
  meaning: 'No light aircraft has the length, the chord or the empty centre of gravity of the record',
  remedy: m.geometryImpossible_remedy,
  source: PRACTICE,
  check: ({ visit, results }) => geometryHits(visit, results, 'impossible'),
};
