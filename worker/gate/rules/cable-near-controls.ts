import { CONTROL_CLEARANCE_MM, isClearOfControl } from '../../calc/wiring/control-clearance.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, memory, type Rule } from '../rule.ts';

export const cableNearControls: Rule = {
  code: 'CABLE_NEAR_CONTROLS',
  severity: 'caution',
  meaning: 'A wire or loom passes a control within 3 inches without a guard, or could reach it when one clamp fails',
  remedy: phrase`Move it or guard it, clamp it so that no one clamp frees it, and move the control through its travel`,
  source: memory('AC 43.13-1B 11-96 and 11-125: 3 inches from control cables, or guarded; no single clamp to fail'),
  check: ({ visit, say }) =>
    (visit.wiring?.nearControls ?? []).flatMap((near, index): Hit[] => {
      if (isClearOfControl(near)) return [];
      const { what, control, distanceMm, isSecured, isGuarded } = near;
      const state = isSecured ? say.words`without a guard` : say.words`not secured against one failed clamp`;
      const [distanceText, clearText] = say.apart('arm', distanceMm, CONTROL_CLEARANCE_MM);
      return [
        {
          path: ['wiring', 'nearControls', index],
          sentence: say.words`${what} passes ${control} at ${distanceText}, ${state}; ${clearText} are wanted, or a guard, and clamps in any case`,
          data: { distanceMm, limitMm: CONTROL_CLEARANCE_MM, isSecured, isGuarded },
        },
      ];
    }),
};
