import type { Assessed, OpenDue } from '../../../core/core.ts';
import { inEnglish } from '../../../core/text/formatter.ts';
import { termOf } from '../../../core/text/terms.ts';
import { json, orNotFound, orUnavailable } from '../answer.ts';
import { requireNotLost } from '../known-aircraft.ts';
import { openBefore } from '../open-before.ts';
import type { OwnedPack } from '../owned-pack.ts';
import { ledgerOf } from '../params.ts';
import type { Call, Operation } from '../route.ts';
import { DueAnswer } from '../schemas.ts';
import { factsOf } from '../sealed-facts.ts';
import { sealedRecord } from '../sealed-record.ts';

// What is due is counted here, over all packs, with the code of the pack: a page would need every record.

export const getDue: Operation = {
  id: 'getDue',
  summary: 'Open items of an aircraft over all its packs, counted from today',
  description:
    'Due items, recurring and open bulletins, deferred findings and findings to watch, limitations and outstanding flight tests: from the pack in which each first appeared until a later record closes it. Hours and landings are counted from the last reading, whether that pack was withdrawn or not: flights since then are not known here.',
  answers: {
    200: { description: 'Open items, the first due at the top', content: { 'application/json': DueAnswer } },
  },
  async handle(call) {
    const name = ledgerOf(call);
    const packs = orUnavailable(await call.world.archive.ledger(name, (ledger) => ledger.newestIssues()));
    if (packs.length === 0) await requireNotLost(call, name);
    const newest = orNotFound(packs.at(-1), 'such pack of this aircraft');
    const pack = packs.findLast(({ withdrawal }) => withdrawal === null) ?? newest;
    const at = call.world.now().toISOString();
    const before = packs.filter(({ summary }) => summary.number < pack.summary.number);
    const assessed = orNotFound(
      await sealedRecord(call, { name, pack }, at, await openBefore(call, name, before)),
      'due list of this pack',
    );
    const past = await openBefore(call, name, packs);
    const open = call.pipeline.timeLeft(past.open, past.readings, at);
    const ofKind = (...kinds: OpenDue['kind'][]): OpenDue[] => open.filter(({ kind }) => kinds.includes(kind));
    return json({
      pack: pack.summary.pack,
      issuedAt: pack.summary.issuedAt,
      withdrawn: newest.withdrawal === null ? null : newest.summary.pack,
      comingDue: call.pipeline.dueItems(past.open, assessed.visit, past.readings, at).map(dueAnswer),
      items: ofKind('due', 'bulletin').map(dueAnswer),
      deferred: ofKind('deferral').map(({ id, item = id, text, until, of, meter, daysLeft, hoursLeft, isOverdue }) => {
        const limits = { untilDate: until.date, untilHours: until.hours, of, meter };
        return { id, openItem: item, text, ...limits, daysLeft, hoursLeft, isOverdue };
      }),
      watched: ofKind('watch').map(({ id, item = id, text }) => ({ id, openItem: item, text })),
      limitations: ofKind('limitation').map(({ id, item = id, text }) => ({ openItem: item, text })),
      flightTests: ofKind('test').map(({ id, item = id, text }) => ({ id, openItem: item, text })),
      tighter: await tighterThan(call, { name, pack }, assessed),
    } satisfies DueAnswer);
  },
};

/** Returns the limits for which today's rules allow less than a pack states. */
async function tighterThan(call: Call, owned: OwnedPack, { visit, results }: Assessed): Promise<DueAnswer['tighter']> {
  const kept = (await factsOf(call, owned))?.owner;
  return call.pipeline.factsToday({ visit, results }, { kept, summary: owned.pack.summary }).tighter;
}

/** Returns an item as an answer; a certificate without a title has the name of its kind. */
function dueAnswer(due: OpenDue): DueAnswer['items'][number] {
  const { id, item = id, kind, basis, text, of, meter, until, counters, dueAfter, isOverdue, isWithinTolerance } = due;
  const { daysLeft, hoursLeft, landingsLeft, countsLeft, forecastDate } = due;
  const { date, hours, landings, ...counts } = until;
  const dueCounts = Object.keys(counts).length === 0 ? undefined : counts;
  const limits = { dueDate: date, dueHours: hours, dueLandings: landings, dueCounts, counters, dueAfter };
  const left = { daysLeft, hoursLeft, landingsLeft, countsLeft, forecastDate };
  const name = kind === 'certificate' ? inEnglish(termOf(text)) : text;
  return { id, openItem: item, kind, item: name, basis, of, meter, ...limits, ...left, isOverdue, isWithinTolerance };
}
