import * as m from '../../text/generated/messages.ts';
import { aircraftLine } from '../aircraft-line.ts';
import type { PackContext } from '../context.ts';

/** What every document says of itself: its aircraft, and whether the pack is released. */
export function common(context: PackContext): { aircraft: string; isReleased: boolean; status: string } {
  const { released, issuedAt, fmt } = context;
  return {
    aircraft: aircraftLine(context),
    isReleased: released !== undefined,
    status: released
      ? fmt.text(m.common_released, {
          releasedAt: fmt.timestamp(released.releasedAt),
          releasedBy: released.releasedBy.name,
        })
      : fmt.text(m.common_state, { issuedAt: fmt.timestamp(issuedAt) }),
  };
}

/** Says where the figures of a document come from and what they are worth. */
export function sources(...lines: string[]): { sources: string[] } {
  return { sources: lines };
}
