import type { Baseline } from '../../../worker/client/client.ts';
import { historyChart } from '../../../worker/core/pack/chart/history-chart.ts';
import type { Formatter } from '../../../worker/core/text/formatter.ts';
import { element } from '../element.ts';
import { table } from './table.ts';

/**
 * How the empty aircraft came to its mass, as a pack has it: a picture and the figures of it.
 *
 * @param baseline undefined where the pack leaves no empty mass
 * @param standing the pack, and whether it is the release that stands
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
    ? `As ${pack} has it.`
    : `As ${pack} has it, which does not stand: do not load the aircraft by these figures.`;
  const said = element('p', {}, origin);
  // One step has no course to be drawn.
  return history.length === 1 ? [said, figures] : [said, figure, figures];
}
