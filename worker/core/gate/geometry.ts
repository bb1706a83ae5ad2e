import { percentMac } from '../calc/mass/mac.ts';
import type { Results } from '../calc/results.ts';
import type { Visit } from '../record/visit.ts';
import * as figure from '../text/figure.ts';
import * as m from '../text/generated/messages.ts';
import { said } from '../text/message.ts';
import { askingUnit, meantUnit } from './meant-unit.ts';
import type { Hit } from './rule.ts';
import { isInRange, type UsualRange } from './within.ts';

/** Usual ranges of lengths in mm and of the empty centre of gravity in per cent of the chord, and what no light aircraft has. */
const LENGTH = { usual: { from: 2000, to: 20_000 }, possible: { from: 1000, to: 40_000 } } as const;
const CHORD = { usual: { from: 400, to: 4000 }, possible: { from: 200, to: 8000 } } as const;
const EMPTY_PERCENT = { usual: { from: -20, to: 80 }, possible: { from: -70, to: 130 } } as const;

interface Ranges {
  usual: UsualRange;
  possible: UsualRange;
}

/** Returns the geometry of an aircraft that is unusual; or, instead, that no light aircraft has. */
export function geometryHits(
  { aircraft, units }: Pick<Visit, 'aircraft' | 'units'>,
  { schedule }: Pick<Results, 'schedule'>,
  severity: 'unusual' | 'impossible',
): Hit[] {
  const isHit = (value: number, { usual, possible }: Ranges): boolean =>
    severity === 'impossible' ? !isInRange(value, possible) : isInRange(value, possible) && !isInRange(value, usual);
  const { airframe, mac } = aircraft;
  const lengths = [
    {
      path: ['aircraft', 'airframe'],
      message: m.geometry_airframe,
      valueMm: airframe.aftMm - airframe.forwardMm,
      ranges: LENGTH,
    },
    ...(mac
      ? [{ path: ['aircraft', 'mac', 'length'], message: m.geometry_chord, valueMm: mac.lengthMm, ranges: CHORD }]
      : []),
  ];
  const hits: Hit[] = lengths
    .filter(({ valueMm, ranges }) => isHit(valueMm, ranges))
    .map(({ path, message, valueMm, ranges: { usual } }) => ({
      path,
      sentence: askingUnit(
        said(message, {
          length: figure.measure('arm', valueMm),
          from: figure.number('arm', usual.from),
          to: figure.measure('arm', usual.to),
        }),
        meantUnit('arm', valueMm, units, (value) => isInRange(value, usual)),
      ),
      data: { lengthMm: valueMm, fromMm: usual.from, toMm: usual.to },
    }));
  const percent = schedule && percentMac(mac, schedule.armMm);
  if (percent === undefined || !isHit(percent, EMPTY_PERCENT)) return hits;
  const { from, to } = EMPTY_PERCENT.usual;
  return [
    ...hits,
    {
      path: ['aircraft', 'mac', 'leadingEdgeArm'],
      sentence: said(m.geometry_emptyPercent, {
        percent: figure.plain(percent, 0),
        from: figure.asIs(from),
        to: figure.asIs(to),
      }),
      data: { percent, fromPercent: from, toPercent: to },
    },
  ];
}
