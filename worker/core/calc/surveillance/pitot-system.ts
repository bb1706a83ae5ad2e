import type { Visit } from '../../record/visit.ts';
import { limited, limitedDifference } from './limited.ts';
import type { LimitCheck } from './surveillance-result.ts';

type PitotSystem = NonNullable<NonNullable<Visit['surveillance']>['pitotSystems']>[number];

/**
 * Returns the leak of a pitot system and the errors of its airspeed indicator, with the limits that the record states.
 * All speeds are in the unit of the test: kt, km/h or mph.
 *
 * @source the method of the leak test is AC 43.13-1B par. 12-59, read: 150 kt held, up to 10 kt lost in 1 minute, if
 *   the manufacturer has no instructions; the allowed errors of the indicator are those of its manufacturer
 */
export function pitotFigures({ unit, leak, points = [] }: Pick<PitotSystem, 'unit' | 'leak' | 'points'>): LimitCheck[] {
  return [
    ...(leak
      ? [
          {
            ...limited('pitot-loss', leak.lossSpeed, unit, { most: leak.limitSpeed }),
            at: { value: leak.appliedSpeed, unit },
          },
        ]
      : []),
    ...points.map(({ setSpeed, readSpeed, limitSpeed }) => ({
      ...limitedDifference('airspeed', { read: readSpeed, against: setSpeed }, unit, limitSpeed),
      at: { value: setSpeed, unit },
    })),
  ];
}
