import type { Baseline } from '../../../worker/client/client.ts';
import { historyChart } from '../../../worker/pack/chart/history-chart.ts';
import { printDate } from '../../../worker/units/calendar.ts';
import { type Units, unitOf } from '../../../worker/units/quantity.ts';
import { printNumber } from '../../../worker/units/rounding.ts';
import { element } from '../element.ts';
import { table } from './table.ts';

/** How the empty aircraft came to its mass, as the newest pack has it: a picture and the figures of it. */
export function historyFigures({ history = [] }: Baseline, units: Units): HTMLElement[] {
  if (history.length === 0) return [element('p', {}, 'The newest pack has no history.')];
  const unit = unitOf('mass', units);
  const figure = element('figure', { className: 'history' });
  figure.innerHTML = historyChart(
    'Empty mass',
    unit,
    history.map(({ mass }) => mass),
  );
  const rows = history.map(({ date, reason, mass, moment }, index) => {
    const arm = `${printNumber(moment / mass, 1)} ${unitOf('arm', units)}`;
    return [`${index + 1}. ${printDate(date)}`, reason, `${printNumber(mass, 1)} ${unit}`, arm];
  });
  return [figure, table(['Date', 'Reason', 'Empty mass', 'Arm'], rows)];
}
