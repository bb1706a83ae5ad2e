import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Rule, read } from '../../rule.ts';

export const transponderClassDiffers: Rule = {
  code: 'TRANSPONDER_CLASS_DIFFERS',
  severity: 'blocks',
  meaning: 'The transponder test is of another mode than the transponder aboard',
  remedy: m.transponderClassDiffers_remedy,
  source: read('14 CFR 43 App. F (a), (c), (d): limits by class; (e) to (j): Mode S'),
  check: ({ visit, results }) => {
    const tested = visit.surveillance?.transponderTest?.class;
    const modes = results.change.after.flatMap(({ equipmentKind }) =>
      equipmentKind === 'transponder-mode-s' ? ['S'] : equipmentKind === 'transponder-mode-c' ? ['AC'] : [],
    );
    const [aboard] = modes;
    if (tested === undefined || aboard === undefined || modes.includes(tested.split('-')[0] ?? '')) return undefined;
    return {
      path: ['surveillance', 'transponderTest', 'class'],
      sentence: said(aboard === 'S' ? m.transponderClassDiffers_aboardS : m.transponderClassDiffers_aboardAC),
      data: { tested },
    };
  },
};
