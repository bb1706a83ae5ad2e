import type { Visit } from '../../record/visit.ts';
import { STATIC_LEAK_LIMIT_FT, STATIC_RAISED_LEAST_FT } from './altimeter-limits.ts';
import { checkOf } from './check.ts';
import { limited } from './limited.ts';
import type { StaticSystemResult } from './surveillance-result.ts';

type StaticSystem = NonNullable<NonNullable<Visit['surveillance']>['staticSystems']>[number];

/**
 * Returns the leak of a static pressure system with its limit, and the other checks of it.
 *
 * @source 14 CFR 43 Appendix E (a); figures of the leak from 14 CFR 23.1325(b)(2)(i), before 2017, for aeroplanes
 *   without pressurisation, because the appendix leaves them to the Administrator
 */
export function staticSystemResult({
  raisedFt,
  lossFt,
  isClear,
  portHeater,
  isUndeformed,
}: StaticSystem): StaticSystemResult {
  const heaterWorks = portHeater === undefined ? undefined : portHeater !== 'inoperative';
  return {
    figures: [
      limited('raised-above-aerodrome', raisedFt, 'ft', { least: STATIC_RAISED_LEAST_FT }),
      limited('loss-in-one-minute', lossFt, 'ft', { most: STATIC_LEAK_LIMIT_FT }),
    ],
    checks: [
      checkOf('(a)(1)', 'static-clear', isClear),
      checkOf('(a)(3)', 'static-port-heater', heaterWorks),
      checkOf('(a)(4)', 'static-surface', isUndeformed),
    ],
  };
}
