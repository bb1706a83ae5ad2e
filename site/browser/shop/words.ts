import { element } from '../element.ts';
import type { VisitInHand } from './fleet-line.ts';

/** Returns the progress of a visit in one line. */
export function readinessOf({ blocks, cautions, slackMin }: VisitInHand): string {
  const open = [blocks > 0 ? `${blocks} against the release` : '', cautions > 0 ? `${cautions} to accept` : ''];
  const state = open.filter(Boolean).join(', ') || 'ready for its inspector';
  return slackMin === undefined ? state : `${state}; ${slackOf(slackMin)}`;
}

const slackOf = (minutes: number): string => {
  const [hours, rest] = [Math.floor(Math.abs(minutes) / 60), Math.round(Math.abs(minutes) % 60)];
  return `${hours} h ${rest} min ${minutes < 0 ? 'too late for' : 'left before'} the planned flight`;
};

export const visitLink = (registration: string, visit: string): HTMLElement => {
  const asked = new URLSearchParams({ aircraft: registration, visit });
  return element('a', { href: `/inspection?${asked}` }, visit);
};

/** Returns the address of the page of an aircraft. */
export const aircraftAddress = (registration: string): string => `/aircraft?${new URLSearchParams({ registration })}`;

export const aircraftLink = (registration: string): HTMLElement =>
  element('a', { href: aircraftAddress(registration) }, registration);
