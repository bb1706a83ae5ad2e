import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const shedLoadOnBattery: Rule = {
  code: 'SHED_LOAD_ON_BATTERY',
  severity: 'caution',
  meaning: 'A load that is not essential has a current on the battery alone',
  remedy: m.shedLoadOnBattery_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['electrical', 'loads'], visit.electrical?.loads, ({ id, name, change, isEssential, amps, watts }) => {
      const onBattery = amps?.sourceFailed ?? watts?.sourceFailed ?? 0;
      if (isEssential || change === 'removed' || onBattery === 0) return undefined;
      return {
        field: 'isEssential',
        sentence: said(amps?.sourceFailed ? m.shedLoadOnBattery_amps : m.shedLoadOnBattery_watts, {
          name,
          onBattery: figure.plain(onBattery, 2),
        }),
        data: { load: id },
      };
    }),
};
