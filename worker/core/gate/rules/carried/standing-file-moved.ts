import { PACK_NAME } from '../../../patterns.ts';
import { standingChanges } from '../../../record/standing-changes.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const standingFileMoved: Rule = {
  code: 'STANDING_FILE_MOVED',
  severity: 'blocks',
  meaning: 'The record builds on a pack other than the newest release of the aircraft',
  remedy: m.standingFileMoved_remedy,
  source: PRACTICE,
  check: ({ visit, facts }) => {
    const { laterPacks, standing, newerStanding } = facts;
    const named = visit.standing;
    // Without an archive nobody knows what is newest.
    if (!named || !laterPacks) return undefined;
    const newest = facts.lastPack ?? facts.lastUnderOtherMarks;
    const path = ['standing', 'pack'];
    if (!newest) {
      // The first pack here builds on one under other marks, or of another workshop.
      const isFirst =
        facts.standingSealedBy || PACK_NAME.exec(named.pack)?.[1] !== visit.aircraft.registration.toUpperCase();
      const sentence = said(m.standingFileMoved_withdrawn, { named: named.pack });
      return isFirst ? undefined : { path, sentence, data: { named: named.pack } };
    }
    if (named.pack === newest.pack && named.sha256 === newest.recordSha256) return undefined;
    const changes = standing && newerStanding ? standingChanges(standing, newerStanding) : [];
    const parts = [...new Set(changes.map(({ part }) => part.split('/')[1] ?? ''))].join(', ');
    return {
      path,
      sentence: said(m.standingFileMoved_newer, {
        named: named.pack,
        newest: newest.pack,
        count: changes.length,
        parts,
      }),
      data: { named: named.pack, newest: newest.pack, parts },
    };
  },
};
