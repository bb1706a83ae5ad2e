import type { Baseline } from '../../../worker/client/client.ts';
import { historyChart } from '../../../worker/pack/chart/history-chart.ts';
import type { Printer } from '../../../worker/units/print.ts';
import { element } from '../element.ts';
import { table } from './table.ts';

/** How the empty aircraft came to its mass, as the newest pack has it: a picture and the figures of it. */
export function historyFigures({ history = [] }: Baseline, say: Printer): HTMLElement[] {
  if (history.length === 0) return [element('p', {}, 'The newest pack has no history.')];
  const unit = say.unit('mass');
  const figure = element('figure', { className: 'history' });
  figure.innerHTML = historyChart(
    'Empty mass',
    unit,
    history.map(({ mass }) => mass),
    say,
  );
  const rows = history.map(({ date, reason, mass, moment }, index) => {
    const arm = `${say.plain(moment / mass, 1)}\u00a0${say.unit('arm')}`;
    return [`${index + 1}. ${say.date(date)}`, reason, `${say.plain(mass, 1)}\u00a0${unit}`, arm];
  });
  const figures = table(['Date', 'Reason', 'Empty mass', 'Arm'], rows);
  // One step has no course to be drawn.
  return history.length === 1 ? [figures] : [figure, figures];
}
