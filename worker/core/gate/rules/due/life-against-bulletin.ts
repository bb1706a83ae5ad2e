import { isAtLeast, isAtMost } from '../../../calc/numbers/limit-met.ts';
import { namedMeter } from '../../../calc/open-items/stands-open.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said, type Value } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { type EntryHit, hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

/** Hours are compared only if both count the same product. */
export const lifeAgainstBulletin: Rule = {
  code: 'LIFE_AGAINST_BULLETIN',
  severity: 'caution',
  meaning: 'A maintenance item and its recurring bulletin are due at different dates or hours, or bind differently',
  remedy: m.lifeAgainstBulletin_remedy,
  source: PRACTICE,
  check: ({ visit, results }) => {
    const due = new Map(results.due.map((each) => [each.id, each]));
    return hitsIn(['lives', 'items'], visit.lives?.items, ({ id, reference, basis }) => {
      const bulletin = visit.bulletins?.items.find(
        (each) => each.status === 'recurring' && each.id === reference?.trim(),
      );
      const { dueDate, dueHours, of } = due.get(id) ?? {};
      if (!bulletin) return undefined;
      const binds = bulletin.kind === 'directive' || bulletin.kind === 'mandatory';
      if (binds && (basis === 'recommendation' || basis === 'owner'))
        return {
          field: 'basis',
          sentence: said(m.lifeAgainstBulletin_softBasis, { id, basis: termOf(basis), bulletin: bulletin.id }),
          data: { life: id, bulletin: bulletin.id },
        };
      const { nextDueDate, nextDueHours } = bulletin;
      const isOfOne = of === namedMeter(visit, bulletin.meter).of;
      const hit = (own: Value, other: Value): EntryHit => ({
        sentence: said(m.lifeAgainstBulletin_dueBulletinNames, { id, own, bulletin: bulletin.id, other }),
        data: { life: id, bulletin: bulletin.id },
      });
      if (isOfOne && dueHours !== undefined && nextDueHours !== undefined && differ(dueHours, nextDueHours)) {
        const [own, other] = figure.plainApart(dueHours, nextDueHours, 1);
        return hit(said(m.hours, { hours: own }), said(m.hours, { hours: other }));
      }
      return dueDate !== undefined && nextDueDate !== undefined && dueDate !== nextDueDate
        ? hit(figure.date(dueDate), figure.date(nextDueDate))
        : undefined;
    });
  },
};

const differ = (a: number, b: number): boolean => !(isAtLeast(a, b) && isAtMost(a, b));
