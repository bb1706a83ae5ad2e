import { CONTROL_CLEARANCE_MM, isClearOfControl } from '../../../calc/wiring/control-clearance.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, memory, type Rule } from '../../rule.ts';

export const cableNearControls: Rule = {
  code: 'CABLE_NEAR_CONTROLS',
  severity: 'caution',
  meaning: 'A wire or loom passes a control within 3 inches without a guard, or could reach it when one clamp fails',
  remedy: m.cableNearControls_remedy,
  source: memory('AC 43.13-1B 11-96 and 11-125: 3 inches from control cables, or guarded; no single clamp to fail'),
  check: ({ visit }) =>
    (visit.wiring?.nearControls ?? []).flatMap((near, index): Hit[] => {
      if (isClearOfControl(near)) return [];
      const { what, control, distanceMm, isSecured, isGuarded } = near;
      const state = isSecured ? said(m.cableNearControls_withoutGuard) : said(m.cableNearControls_notSecuredAgainstOne);
      const [distanceText, clearText] = figure.apart('arm', distanceMm, CONTROL_CLEARANCE_MM);
      return [
        {
          path: ['wiring', 'nearControls', index],
          sentence: said(m.cableNearControls_passesWantedGuardClamps, {
            what,
            control,
            distance: distanceText,
            state,
            clear: clearText,
          }),
          data: { distanceMm, limitMm: CONTROL_CLEARANCE_MM, isSecured, isGuarded },
        },
      ];
    }),
};
