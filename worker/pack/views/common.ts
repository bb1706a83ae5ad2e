import * as m from '../../text/generated/messages.ts';
import { aircraftLine } from '../aircraft-line.ts';
import type { PackContext } from '../context.ts';

/** What every document says of itself: its aircraft, and whether the pack is released. */
export function common(context: PackContext): { aircraft: string; isReleased: boolean; status: string } {
  const { released, issuedAt, say } = context;
  return {
    aircraft: aircraftLine(context),
    isReleased: released !== undefined,
    status: released
      ? say.text(m.common_released, {
          releasedAt: say.moment(released.releasedAt),
          releasedBy: released.releasedBy.name,
        })
      : say.text(m.common_state, { issuedAt: say.moment(issuedAt) }),
  };
}

/** Says where the figures of a document come from and what they are worth. */
export function sources(...lines: string[]): { sources: string[] } {
  return { sources: lines };
}
