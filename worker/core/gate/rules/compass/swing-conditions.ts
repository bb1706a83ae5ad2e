import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const swingConditions: Rule = {
  code: 'SWING_CONDITIONS',
  severity: 'caution',
  meaning: 'The compass was swung with the engine off or not in level attitude',
  remedy: m.swingConditions_remedy,
  source: read('former 23.1547 (level flight, engines operating)'),
  check: ({ visit }) => {
    const { compass } = visit;
    if (!compass) return undefined;
    const hits: Hit[] = [];
    if (!compass.engineRunning)
      hits.push({ path: ['compass', 'engineRunning'], sentence: said(m.swingConditions_compassSwungEngineOff) });
    if (!compass.level)
      hits.push({
        path: ['compass', 'level'],
        sentence: said(m.swingConditions_compassSwungOutAttitude),
      });
    return hits;
  },
};
