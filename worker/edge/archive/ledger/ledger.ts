import { DurableObject } from 'cloudflare:workers';
import type { PackPlace, PackSummary } from '../../../core/core.ts';
import { canonicalJson } from '../../../core/pack/canonical-json.ts';
import { hasTables, migrate } from '../migrate.ts';
import type { Page, PageRequest } from '../page.ts';
import { serialQueue } from '../serial-queue.ts';
import { append, type Event, entriesAfter, entryAfter, eventBy, headOf, latestEntryAt } from './chain.ts';
import type * as Calls from './ledger-calls.ts';
import { LEDGER_MIGRATIONS } from './ledger-migrations.ts';
import * as links from './links-table.ts';
import { NO_TABLES } from './no-tables.ts';
import * as openings from './openings-table.ts';
import * as outbox from './outbox.ts';
import * as packs from './packs-table.ts';
import { earlierRequest, rememberRequest } from './requests-table.ts';
import { refusalToRestore, writeRestoration } from './restoration.ts';
import { SealingTurn } from './sealing-turn.ts';
import * as visits from './visits-table.ts';

/** Outcome of a request: a result at once, or an event with its change, which returns the result. */
type Decision<T> = { answer: T } | { event: Event; change(): T };

/** Used part of the platform's bindings. */
type LedgerBindings = { INDEX: D1Database };

/**
 * Ledger of one aircraft of one workshop: visits, packs, links and the chain of digests over all of them. Every change
 * is one transaction that also extends the chain. A ledger that was only read has no tables.
 */
export class Ledger extends DurableObject<LedgerBindings> implements Calls.LedgerCalls {
  readonly #storage: DurableObjectStorage;
  readonly #inTurn = serialQueue();
  readonly #sealing = new SealingTurn();
  #hasTables: boolean;

  constructor(state: DurableObjectState, env: LedgerBindings) {
    super(state, env);
    this.#storage = state.storage;
    this.#hasTables = hasTables(state.storage);
    state.blockConcurrencyWhile(async () => {
      if (!this.#hasTables) return;
      migrate(this.#storage, LEDGER_MIGRATIONS);
      const isForgotten = !outbox.isEmpty(this.#sql) && (await this.#storage.getAlarm()) === null;
      if (isForgotten) await this.#storage.setAlarm(Date.now());
    });
  }

  get #sql(): SqlStorage {
    return this.#hasTables ? this.#storage.sql : NO_TABLES;
  }

  async overview(): Promise<Calls.AircraftOverview> {
    const count = (table: 'visits' | 'packs') =>
      this.#sql.exec<{ n: number }>(`SELECT count(*) AS n FROM ${table}`).toArray()[0]?.n ?? 0;
    const newest = packs.newestPack(this.#sql);
    return { visits: count('visits'), packs: count('packs'), newest, head: headOf(this.#sql) };
  }

  async visit(visit: string): Promise<Calls.KeptVisit | null> {
    return visits.wholeVisitAt(this.#sql, visit);
  }

  async visits(page: PageRequest): Promise<Page<Calls.VisitState>> {
    return visits.visitsAfter(this.#sql, page);
  }

  async keep(request: Calls.KeepVisit): Promise<Calls.KeepOutcome> {
    const outcome = await this.#record((): Decision<Calls.KeepOutcome> => {
      const { visit, record, recordSha256, expected, actor, at } = request;
      const kept = visits.stateAt(this.#sql, visit);
      const isSame = kept?.recordSha256 === recordSha256 && expected.kind !== 'absent';
      const refusal = visits.refusalToKeep(kept, expected);
      // A client that repeats a write without having seen the response gets the result of a success (RFC 9110, 13.1.1).
      if (kept && isSame) return { answer: { kind: 'unchanged', state: kept } };
      if (refusal) return { answer: refusal };
      const state = visits.stateAfter(kept, request);
      const body = { visit, version: state.version, recordSha256 };
      const change = (): Calls.KeepOutcome => {
        visits.writeVisit(this.#sql, state, record);
        return { kind: kept ? 'replaced' : 'created', state };
      };
      return { event: eventBy(actor, 'visit-kept', at, body), change };
    });
    if (outcome.kind === 'unchanged') await visits.mendRecord(this.#sql, request);
    return outcome;
  }

  async packsAround(visit: string): Promise<Calls.PacksAround> {
    return { state: visits.stateAt(this.#sql, visit), ...packs.aroundVisit(this.#sql, visit) };
  }

  async visitAmongPacks(registration: string, visit: string): Promise<Calls.VisitAmongPacks> {
    await visits.wholeVisitAt(this.#sql, visit);
    return this.#among(registration, visit);
  }

  #among(registration: string, visit: string): Calls.VisitAmongPacks {
    const kept = visits.visitAt(this.#sql, visit);
    const place = packs.placeFor(this.#sql, registration, visit);
    return { kept, ...packs.aroundVisit(this.#sql, visit), place };
  }

  async visitToSeal(registration: string, visit: string): Promise<Calls.VisitToSeal> {
    await visits.wholeVisitAt(this.#sql, visit);
    while (this.#sealing.held) await this.#sealing.held;
    // Without another wait: other waiting requests then find the turn taken.
    const among = this.#among(registration, visit);
    const isOwed = among.kept !== null && among.kept.state !== 'released';
    return { ...among, turn: isOwed ? this.#sealing.take() : null };
  }

  async leaveTurn(turn: number): Promise<void> {
    this.#sealing.leave(turn);
  }

  async newestIssues(): Promise<Calls.KeptPack[]> {
    return packs.newestIssues(this.#sql);
  }

  async commit(request: Calls.CommitPack): Promise<Calls.CommitOutcome> {
    const outcome = await this.#record((): Decision<Calls.CommitOutcome> => {
      const { place, version, digests, summary, actor, at } = request;
      // Two requests under one key may both have been the first when they were read.
      const isKeyTaken = earlierRequest(this.#sql, request.request).kind !== 'first';
      const kept = visits.stateAt(this.#sql, place.visit);
      const standing = kept?.state === 'released' && kept.pack ? packs.packAt(this.#sql, kept.pack) : null;
      if (standing && kept?.version === version) return { answer: { kind: 'already-released', pack: standing } };
      const placeNow = packs.placeFor(this.#sql, summary.registration, place.visit);
      if (kept?.version !== version || !isSamePlace(place, placeNow)) return { answer: { kind: 'moved' } };
      if (isKeyTaken) return { answer: { kind: 'key-reused' } };
      const lastAt = latestEntryAt(this.#sql) ?? at;
      if (Date.parse(at) < Date.parse(lastAt)) return { answer: { kind: 'clock-behind', lastAt } };
      // The changes that people wrote down one by one have their digest here, once they are kept.
      const body = { pack: place.pack, visit: place.visit, version, ...digests, entriesSha256: null };
      return { event: eventBy(actor, 'pack-sealed', at, body), change: () => this.#writePack(request) };
    });
    if (request.turn !== null) this.#sealing.leave(request.turn);
    if (outcome.kind === 'sealed') await this.#storage.setAlarm(Date.now());
    return outcome;
  }

  #writePack(request: Calls.CommitPack): Calls.CommitOutcome {
    const { place, digests, summary, workshop, at } = request;
    const previous = place.previous?.pack ?? null;
    packs.writePack(this.#sql, { place, digests, summary, previous, isRestored: false });
    visits.markReleased(this.#sql, place.visit, place.pack);
    rememberRequest(this.#sql, request.request, { answer: place.pack, wasStanding: false }, at);
    outbox.enqueue(this.#sql, workshop, place.pack);
    const standing = { supersededBy: null, withdrawal: null, isShared: false, isRestored: false };
    return { kind: 'sealed', pack: { ...digests, summary, previous, ...standing } };
  }

  async repeated(request: Calls.RequestKey): Promise<Calls.Repeated> {
    const earlier = earlierRequest(this.#sql, request);
    if (earlier.kind !== 'repeated') return earlier;
    const pack = packs.packAt(this.#sql, earlier.answer);
    return pack ? { kind: 'repeated', pack, wasStanding: earlier.wasStanding } : { kind: 'key-reused' };
  }

  async rememberStanding(request: Calls.RequestKey, pack: string, at: string) {
    const earlier = earlierRequest(this.#sql, request);
    if (earlier.kind === 'key-reused') return earlier;
    if (earlier.kind === 'first') rememberRequest(this.#sql, request, { answer: pack, wasStanding: true }, at);
    return { kind: 'remembered' } as const;
  }

  async pack(pack: string): Promise<Calls.KeptPack | null> {
    return packs.packAt(this.#sql, pack);
  }

  async traced(pack: string): Promise<Calls.TracedPack | null> {
    const kept = packs.packAt(this.#sql, pack);
    if (!kept) return null;
    const newest = packs.newestIssue(this.#sql, kept.summary.number);
    return { pack: kept, newest, ...packs.aftermathOf(this.#sql, newest ?? kept) };
  }

  async packs(page: PageRequest): Promise<Page<Calls.KeptPack>> {
    return packs.packsBefore(this.#sql, page);
  }

  async entries(page: PageRequest): Promise<Page<Calls.ChainEntry>> {
    return entriesAfter(this.#sql, page);
  }

  async addLink(request: Calls.AddLink): Promise<Calls.AddLinkOutcome> {
    return this.#record((): Decision<Calls.AddLinkOutcome> => {
      const earlier = earlierRequest(this.#sql, request.request);
      if (earlier.kind === 'key-reused') return { answer: earlier };
      // The same token can come again: it is derived from the key of the request, which is forgotten before the link
      // is.
      const first = links.linkAt(this.#sql, links.linkName(request.tokenSha256));
      if (first) return { answer: { kind: 'repeated', link: first } };
      const pack = packs.packAt(this.#sql, request.pack);
      if (!pack) return { answer: { kind: 'no-pack' } };
      const link = links.linkFrom(request, pack.summary.number);
      const { audience, expiresAt, number } = link;
      const body = { link: link.link, number, audience, expiresAt };
      const change = (): Calls.AddLinkOutcome => {
        links.writeLink(this.#sql, link, request.tokenSha256);
        rememberRequest(this.#sql, request.request, { answer: link.link, wasStanding: false }, request.at);
        return { kind: 'added', link };
      };
      return { event: eventBy(request.actor, 'link-made', request.at, body), change };
    });
  }

  async links(pack: string): Promise<Calls.UsedLink[] | null> {
    const kept = packs.packAt(this.#sql, pack);
    return kept && links.linksOf(this.#sql, kept.summary.number).map((link) => openings.withOpenings(this.#sql, link));
  }

  async withdraw(request: Calls.WithdrawPack): Promise<Calls.KeptPack | null> {
    const { workshop, pack, at, by, reason, actor } = request;
    const withdrawn = await this.#record((): Decision<Calls.KeptPack | null> => {
      const kept = packs.packAt(this.#sql, pack);
      if (!kept || kept.withdrawal) return { answer: kept };
      const withdrawal = { at, by, reason };
      const change = () => {
        packs.markWithdrawn(this.#sql, pack, withdrawal);
        outbox.enqueue(this.#sql, workshop, pack);
        return { ...kept, withdrawal };
      };
      return { event: eventBy(actor, 'pack-withdrawn', at, { pack, by, reason }), change };
    });
    if (!outbox.isEmpty(this.#sql)) await this.#storage.setAlarm(Date.now());
    return withdrawn;
  }

  async revokeLink({ pack, link, actor, at }: Calls.RevokeLink): Promise<Calls.KeptLink | null> {
    return this.#record((): Decision<Calls.KeptLink | null> => {
      const kept = links.linkAt(this.#sql, link);
      const isOfPack = kept?.number === packs.packAt(this.#sql, pack)?.summary.number;
      if (!kept || !isOfPack) return { answer: null };
      if (kept.revokedAt) return { answer: kept };
      const change = () => {
        links.markRevoked(this.#sql, link, at);
        return { ...kept, revokedAt: at };
      };
      return { event: eventBy(actor, 'link-revoked', at, { link }), change };
    });
  }

  async openLink(tokenSha256: string, at: string): Promise<Calls.OpenedLink | null> {
    const link = links.openableLink(this.#sql, tokenSha256, at);
    const pack = link && packs.newestIssue(this.#sql, link.number);
    return pack && { link, pack, ...packs.aftermathOf(this.#sql, pack) };
  }

  async noteOpening(link: string, { at, what }: Calls.Opening): Promise<void> {
    if (links.linkAt(this.#sql, link)) openings.noteOpening(this.#sql, link, at, what);
  }

  async restore(request: Calls.Restoration): Promise<Calls.RestoreOutcome> {
    const outcome = await this.#inTurn(async () => {
      const refusal = refusalToRestore(this.#sql, request);
      return refusal ?? this.#write(() => writeRestoration(this.#sql, request));
    });
    if (!outbox.isEmpty(this.#sql)) await this.#storage.setAlarm(Date.now());
    return outcome;
  }

  async relist(workshop: string, sealed: PackSummary[]): Promise<Calls.Relisted> {
    const mended = packs.mendSummaries(this.#sql, sealed);
    const told = outbox.enqueueAll(this.#sql, workshop);
    if (told > 0) await this.#storage.setAlarm(Date.now());
    return { packs: packs.filesOfPacks(this.#sql), tokens: links.openTokens(this.#sql), mended };
  }

  override async alarm(): Promise<void> {
    const waitMs = await outbox.drain(this.#sql, this.env.INDEX);
    if (waitMs !== null) await this.#storage.setAlarm(Date.now() + waitMs);
  }

  /** Decides on stored data, one request at a time, and writes the event with its change in one transaction. */
  #record<T>(decide: () => Decision<T>): Promise<T> {
    return this.#inTurn(async () => {
      const decision = decide();
      if ('answer' in decision) return decision.answer;
      const entry = await entryAfter(headOf(this.#sql), decision.event);
      return this.#write(() => {
        append(this.#sql, entry);
        return decision.change();
      });
    });
  }

  /** Runs a transaction; the first one creates the tables. */
  #write<T>(change: () => T): T {
    if (!this.#hasTables) migrate(this.#storage, LEDGER_MIGRATIONS);
    this.#hasTables = true;
    return this.#storage.transactionSync(change);
  }
}

/** Whether nothing was sealed or withdrawn between two reads of the same visit. */
const isSamePlace = (a: PackPlace, b: PackPlace): boolean => canonicalJson(a) === canonicalJson(b);
