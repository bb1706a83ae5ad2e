import type { Visit } from '../../visit/visit.ts';
import { STATIC_LEAK_LIMIT_FT, STATIC_RAISED_LEAST_FT } from './altimeter-limits.ts';
import { type Check, checkOf } from './check.ts';
import { type Limited, limited } from './limited.ts';

type StaticSystem = NonNullable<NonNullable<Visit['surveillance']>['staticSystem']>;

/** A static pressure system against what is asked of it. */
export interface StaticSystemResult {
  figures: Limited[];
  checks: Check[];
}

/**
 * The leak of a static pressure system, and what else is looked for in it.
 *
 * @source 14 CFR 43 Appendix E (a); figures of the leak from 14 CFR 23.1325(b)(2)(i), before 2017, for aeroplanes without
 * pressurisation, because the appendix leaves them to the Administrator
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
      limited('Raised above the aerodrome', raisedFt, 'ft', { least: STATIC_RAISED_LEAST_FT }),
      limited('Loss in one minute', lossFt, 'ft', { most: STATIC_LEAK_LIMIT_FT }),
    ],
    checks: [
      checkOf('(a)(1)', 'Free of moisture and restrictions', isClear),
      checkOf('(a)(3)', 'Port heater works, or none is fitted', heaterWorks),
      checkOf('(a)(4)', 'Surface at the port not altered or deformed', isUndeformed),
    ],
  };
}
