import { json, orNotFound, orUnavailable } from '../answer.ts';
import { requireNotLost } from '../known-aircraft.ts';
import { ledgerOf, nextLink, PAGE_QUERY, pageRequestOf } from '../params.ts';
import type { Operation } from '../route.ts';
import * as schemas from '../schemas.ts';
import { packAnswer } from './packs.ts';

export const listAircraft: Operation = {
  id: 'listAircraft',
  summary: 'The aircraft of the workshop, by registration',
  description:
    'Kept with the keys of the workshop, not in an index: an aircraft is here before its first record is kept. An aircraft without any record may be listed too.',
  query: PAGE_QUERY,
  answers: {
    200: {
      description: 'Registrations',
      content: { 'application/json': schemas.KnownAircraftAnswer },
      headers: ['Link'],
    },
  },
  async handle(call) {
    const page = pageRequestOf(call);
    const { workshop } = call.caller;
    const { items, next } = orUnavailable(await call.world.archive.workshop(workshop, (calls) => calls.aircraft(page)));
    return json({ workshop, items }, 200, nextLink(call, next));
  },
};

export const getAircraft: Operation = {
  id: 'getAircraft',
  summary: 'Overview of an aircraft in the archive',
  answers: { 200: { description: 'The aircraft', content: { 'application/json': schemas.AircraftAnswer } } },
  async handle(call) {
    const name = ledgerOf(call);
    const overview = orUnavailable(await call.world.archive.ledger(name, (ledger) => ledger.overview()));
    const isEmpty = overview.head.seq === 0;
    if (isEmpty) await requireNotLost(call, name);
    const { newest, ...rest } = orNotFound(isEmpty ? null : overview, 'such aircraft');
    return json({ registration: name.registration, ...rest, newest: newest && packAnswer(newest) });
  },
};

export const listAircraftPacks: Operation = {
  id: 'listAircraftPacks',
  summary: 'The packs of an aircraft, newest first',
  query: PAGE_QUERY,
  answers: {
    200: {
      description: 'Packs',
      content: { 'application/json': schemas.listOf(schemas.PackAnswer) },
      headers: ['Link'],
    },
  },
  async handle(call) {
    const page = pageRequestOf(call);
    const { items, next } = orUnavailable(
      await call.world.archive.ledger(ledgerOf(call), (ledger) => ledger.packs(page)),
    );
    return json({ items: items.map(packAnswer) }, 200, nextLink(call, next));
  },
};

export const listLedger: Operation = {
  id: 'listLedger',
  summary: 'The chain of all events of the aircraft, oldest first',
  description:
    'Each entry carries the digest of the one before: anybody can check that nothing was altered or removed.',
  query: PAGE_QUERY,
  answers: {
    200: {
      description: 'Entries',
      content: { 'application/json': schemas.listOf(schemas.ChainEntry) },
      headers: ['Link'],
    },
  },
  async handle(call) {
    const page = pageRequestOf(call);
    const { items, next } = orUnavailable(
      await call.world.archive.ledger(ledgerOf(call), (ledger) => ledger.entries(page)),
    );
    return json({ items }, 200, nextLink(call, next));
  },
};
