import { type OutlyingRun, outlyingRun } from '../calc/weighing/outlying-run.ts';
import type { WeighingResult } from '../calc/weighing/weighing-result.ts';
import * as figure from '../text/figure.ts';
import * as m from '../text/generated/messages.ts';
import { type Said, said } from '../text/message.ts';
import type { Regime } from './regimes/regime.ts';
import type { Hit } from './rule.ts';

/** Spread that any set of scales can show. */
const MIN_LIMIT_KG = 1;
/** Share of the total that no scales and no handling explain. */
const BEYOND_BELIEF = 0.01;

/** How far the runs of a weighing lie apart, with both limits. */
export interface RunsSpread {
  spreadKg: number;
  limitKg: number;
  /** Beyond this, a reading is wrong. */
  beliefKg: number;
  count: number;
  outlier: OutlyingRun | undefined;
}

/** Returns the spread of the totals, or of the worst point if the points were not read equally often. */
export function runsSpread(weighing: WeighingResult | undefined, regime: Regime): RunsSpread | undefined {
  if (!weighing) return undefined;
  const { runTotalsKg: totals, points, asWeighed } = weighing;
  const count = Math.max(...points.map(({ runs }) => runs.length));
  if (count < 2) return undefined;
  return {
    spreadKg:
      totals.length > 1 ? Math.max(...totals) - Math.min(...totals) : Math.max(...points.map((p) => p.spreadKg)),
    limitKg: Math.max(MIN_LIMIT_KG, regime.runsDisagreeShare.value * asWeighed.massKg),
    beliefKg: Math.max(MIN_LIMIT_KG, BEYOND_BELIEF * asWeighed.massKg),
    count,
    outlier: outlyingRun(points),
  };
}

/** Returns the hit for runs that lie apart: spread, limit, and the reading that lies furthest off. */
export function spreadHit({ spreadKg, count, outlier }: RunsSpread, limitKg: number): Hit {
  const [spread, limit] = figure.apart('mass', spreadKg, limitKg);
  const data = { spreadKg, limitKg };
  const sentence = said(m.runsDisagree_totalsRunsSpreadOver, { count, spread, limit });
  if (!outlier) return { path: ['weighing', 'points'], sentence, data };
  return {
    path: ['weighing', 'points'],
    sentence: said(m.runsDisagree_furthest, { spread: sentence, reading: furthest(outlier) }),
    data: { ...data, point: outlier.point, ...(outlier.run !== undefined && { run: outlier.run + 1 }) },
  };
}

function furthest({ name, run, netKg, offKg }: OutlyingRun): Said {
  const [mass, off] = [figure.measure('mass', netKg), figure.measure('mass', Math.abs(offKg))];
  return run === undefined
    ? said(m.runsDisagree_twoRuns, { name, off })
    : said(m.runsDisagree_run, { name, run: run + 1, mass, off });
}
