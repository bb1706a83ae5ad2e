import { isAgainst } from '../../gate/control-movement.ts';
import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import { nameOf } from '../people.ts';
import type { View } from '../render.ts';

/** Returns the work near the controls, and the direction check of each control. */
export function controlRows({ visit, fmt }: PackContext): View {
  const { disturbed = [], checks = [] } = visit.controls ?? {};
  return {
    hasChecksOrDisturbed: checks.length + disturbed.length > 0,
    hasDisturbed: disturbed.length > 0,
    disturbed: disturbed.map(({ axis, control, what, at }) =>
      fmt.text(m.controlRows_putBack, { what, axis: control ?? fmt.term(axis), at: fmt.timestamp(at) }),
    ),
    hasControls: checks.length > 0,
    controls: checks.map(
      ({ axis, control, input, response, movement, isDirectionRight, isFullAndFree, travel, by, secondBy, at }) => ({
        axis: control ?? fmt.term(axis),
        input,
        response,
        verdict:
          isDirectionRight && isFullAndFree && !isAgainst({ axis, movement }) ? '✓' : fmt.text(m.controlRows_wrong),
        travel: travel ?? DASH,
        people: `${nameOf(visit, by)}, ${nameOf(visit, secondBy)}`,
        at: fmt.timestamp(at),
      }),
    ),
  };
}
