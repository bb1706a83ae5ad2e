import * as m from '../../../text/generated/messages.ts';
import { list, said } from '../../../text/message.ts';
import { unrecordedChecks } from '../../check-name.ts';
import { type Rule, read } from '../../rule.ts';

export const staticSystemNotTested: Rule = {
  code: 'STATIC_SYSTEM_NOT_TESTED',
  severity: 'caution',
  meaning: 'Altimeter or encoder was tested, but the static pressure system was not, or only in part',
  remedy: m.staticSystemNotTested_remedy,
  source: read('14 CFR 43 Appendix E (a) and (c), 14 CFR 91.411(a)'),
  check: ({ visit, results }) => {
    const { surveillance } = visit;
    if (!surveillance?.altimeter && !surveillance?.encoder && !surveillance?.staticSystem) return undefined;
    const checks = results.surveillance?.staticSystem?.checks;
    const unknown = checks && unrecordedChecks(checks);
    if (unknown?.length === 0) return undefined;
    const sentence = unknown
      ? said(m.staticSystemNotTested_testStaticSystemNot, { unknown: list(unknown, '; ') })
      : said(m.staticSystemNotTested_noTestStaticSystem);
    return { path: ['surveillance', 'staticSystem'], sentence };
  },
};
