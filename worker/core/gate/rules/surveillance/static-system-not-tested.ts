import * as m from '../../../text/generated/messages.ts';
import { list, said } from '../../../text/message.ts';
import { unrecordedChecks } from '../../check-name.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';
import { ofTested } from '../../tested-name.ts';

export const staticSystemNotTested: Rule = {
  code: 'STATIC_SYSTEM_NOT_TESTED',
  severity: 'caution',
  meaning: 'Altimeter or encoder was tested, but the static pressure system was not, or only in part',
  remedy: m.staticSystemNotTested_remedy,
  source: read('14 CFR 43 Appendix E (a) and (c), 14 CFR 91.411(a)'),
  check: ({ visit, results }) => {
    const { altimeters = [], encoder, staticSystems = [] } = visit.surveillance ?? {};
    const path = ['surveillance', 'staticSystems'];
    if (staticSystems.length === 0)
      return altimeters.length > 0 || encoder
        ? { path, sentence: said(m.staticSystemNotTested_noTestStaticSystem) }
        : undefined;
    return hitsIn(path, results.surveillance?.staticSystems, ({ checks }, index) => {
      const unknown = unrecordedChecks(checks);
      if (unknown.length === 0) return undefined;
      return {
        sentence: said(m.staticSystemNotTested_testStaticSystemNot, {
          unknown: ofTested(staticSystems[index], list(unknown, '; ')),
        }),
      };
    });
  },
};
