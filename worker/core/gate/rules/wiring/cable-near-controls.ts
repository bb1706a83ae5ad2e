import { CONTROL_CLEARANCE_MM, isClearOfControl } from '../../../calc/wiring/control-clearance.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { memory, type Rule } from '../../rule.ts';

export const cableNearControls: Rule = {
  code: 'CABLE_NEAR_CONTROLS',
  severity: 'caution',
  meaning: 'A wire or loom is within 3 inches of a control without a guard, or not clamped against one failure',
  remedy: m.cableNearControls_remedy,
  source: memory('AC 43.13-1B 11-125'),
  check: ({ visit }) =>
    hitsIn(['wiring', 'nearControls'], visit.wiring?.nearControls, (near) => {
      if (isClearOfControl(near)) return undefined;
      const { what, control, distanceMm, isSecured, isGuarded } = near;
      const state = isSecured ? said(m.cableNearControls_withoutGuard) : said(m.cableNearControls_notSecuredAgainstOne);
      const [distanceText, clearText] = figure.apart('arm', distanceMm, CONTROL_CLEARANCE_MM);
      return {
        sentence: said(m.cableNearControls_passesWantedGuardClamps, {
          what,
          control,
          distance: distanceText,
          state,
          clear: clearText,
        }),
        data: { distanceMm, limitMm: CONTROL_CLEARANCE_MM, isSecured, isGuarded },
      };
    }),
};
