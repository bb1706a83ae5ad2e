import type { Baseline } from '../../../worker/client/client.ts';
import { historyChart } from '../../../worker/core/pack/chart/history-chart.ts';
import type { Formatter } from '../../../worker/core/text/formatter.ts';
import { element } from '../element.ts';
import { table } from './table.ts';

/**
 * Returns the empty-mass history of a pack: a drawing and its figures.
 *
 * @param baseline undefined if the pack has no empty mass
 * @param standing the pack, and whether it is the current release
 */
export function historyFigures(
  baseline: Baseline | undefined,
  { pack, stands }: { pack: string; stands: boolean },
  fmt: Formatter,
): HTMLElement[] {
  const { history = [] } = baseline ?? {};
  if (history.length === 0) return [element('p', {}, `${pack} has no history.`)];
  const unit = fmt.unit('mass');
  const figure = element('figure', { className: 'history' });
  figure.innerHTML = historyChart(
    'Empty mass',
    unit,
    history.map(({ mass }) => mass),
    fmt,
  );
  const rows = history.map(({ date, reason, mass, moment }, index) => {
    const arm = `${fmt.plain(moment / mass, 1)}\u00a0${fmt.unit('arm')}`;
    return [`${index + 1}. ${fmt.date(date)}`, reason, `${fmt.plain(mass, 1)}\u00a0${unit}`, arm];
  });
  const figures = table(['Date', 'Reason', 'Empty mass', 'Arm'], rows);
  const origin = stands
    ? `From ${pack}.`
    : `From ${pack}, which is not current: do not load the aircraft by these figures.`;
  const said = element('p', {}, origin);
  // One step has no course to draw.
  return history.length === 1 ? [said, figures] : [said, figure, figures];
}
