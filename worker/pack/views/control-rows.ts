import { printMoment } from '../../units/calendar.ts';
import type { PackContext } from '../context.ts';
import { DASH, nameOf } from '../people.ts';
import type { View } from '../render.ts';

/** What was disturbed near the controls, and how each control was proved by direction. */
export function controlRows({ visit }: PackContext): View {
  const { disturbed = [], checks = [] } = visit.controls ?? {};
  return {
    hasDisturbed: disturbed.length > 0,
    disturbed: disturbed.map(({ axis, what, at }) => `${what} (${axis}), put back ${printMoment(at)}`),
    hasControls: checks.length > 0,
    controls: checks.map(({ axis, input, response, isDirectionRight, isFullAndFree, travel, by, secondBy, at }) => ({
      axis,
      input,
      response,
      verdict: isDirectionRight && isFullAndFree ? '✓' : 'WRONG',
      travel: travel ?? DASH,
      people: `${nameOf(visit, by)}, ${nameOf(visit, secondBy)}`,
      at: printMoment(at),
    })),
  };
}
