import type { ReleaseClock } from '../../calc/clock/release-clock.ts';
import type { Formatter } from '../../text/formatter.ts';
import * as m from '../../text/generated/messages.ts';
import { axisFor } from './axis.ts';
import { GRID, INK, PALE, SHADE } from './ink.ts';
import { label, line } from './plot.ts';
import { shortened } from './shortened.ts';
import { drawing, element } from './svg.ts';

const [WIDTH, WIDTH_MM, ROW, LEFT, RIGHT] = [420, 125, 18, 172, 14];
const NAME_EM = 16.2;
const HEAD = 18;

/** Draws the remaining work: a bar for each job from now on, the critical ones dark, and the latest take-off as a dashed line. */
export function clockChart({ plan, slackMin }: ReleaseClock, fmt: Formatter): string {
  const latestMin = slackMin === undefined ? undefined : plan.totalMin + slackMin;
  const minutes = axisFor([0, plan.totalMin, Math.min(Math.max(latestMin ?? 0, 0), plan.totalMin * 2)], 6);
  const across = (min: number): number =>
    LEFT + ((min - minutes.from) / (minutes.to - minutes.from)) * (WIDTH - LEFT - RIGHT);
  const foot = HEAD + plan.jobs.length * ROW + 4;
  const grid = minutes.ticks.map(
    (min) =>
      line({ x: across(min), y: HEAD - 4 }, { x: across(min), y: foot }, GRID) +
      label(String(min), { x: across(min), y: HEAD - 7 }, 'middle'),
  );
  const bars = plan.jobs.map(({ id, text, startMin, endMin, isCritical }, index) => {
    const y = HEAD + index * ROW;
    const width = Math.max(1, across(endMin) - across(startMin));
    return (
      label(shortened(`${id} ${text}`, NAME_EM), { x: LEFT - 8, y: y + 11 }, 'end') +
      element('rect', { x: across(startMin), y: y + 2, width, height: 11, fill: isCritical ? SHADE : PALE })
    );
  });
  const isShown = latestMin !== undefined && latestMin >= minutes.from && latestMin <= minutes.to;
  const latest = isShown
    ? line({ x: across(latestMin), y: HEAD - 4 }, { x: across(latestMin), y: foot }, INK, 1.4, '4 2.5')
    : '';
  const said = plan.jobs.map(({ id, startMin, endMin }) =>
    fmt.text(m.clockChart_fromTo, { id, startMin: Math.round(startMin), endMin: Math.round(endMin) }),
  );
  const title = fmt.text(m.clockChart_jobsLeftMinutesNow, { said: said.join('; ') });
  return drawing(WIDTH, foot + 4, WIDTH_MM, title, grid.join('') + bars.join('') + latest);
}
