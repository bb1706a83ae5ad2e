import * as m from '../../text/generated/messages.ts';
import { aircraftLine } from '../aircraft-line.ts';
import type { PackContext } from '../context.ts';

/** Returns the common head of every document: its aircraft, and whether the pack is released. */
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

/** Returns the sources of a document's figures and their quality. */
export function sources(...lines: string[]): { sources: string[] } {
  return { sources: lines };
}
