import { phrase } from '../../words/words.ts';
import { unrecordedChecks } from '../check-name.ts';
import { type Rule, read } from '../rule.ts';

export const staticSystemNotTested: Rule = {
  code: 'STATIC_SYSTEM_NOT_TESTED',
  severity: 'caution',
  meaning: 'Altimeter or encoder were tested, and the static pressure system that feeds them was not, or in part',
  remedy: phrase`Test it after it was last opened, and enter every check`,
  source: read('14 CFR 43 Appendix E (a) and (c), 14 CFR 91.411(a)'),
  check: ({ visit, results, say }) => {
    const { surveillance } = visit;
    if (!surveillance?.altimeter && !surveillance?.encoder && !surveillance?.staticSystem) return [];
    const checks = results.surveillance?.staticSystem?.checks;
    const unknown = checks && unrecordedChecks(checks, say);
    if (unknown?.length === 0) return [];
    const sentence = unknown
      ? say.words`The test of the static system does not record: ${unknown.join('; ')}`
      : say.words`No test of the static system is recorded beside that of the altimeter or encoder`;
    return [{ path: ['surveillance', 'staticSystem'], sentence }];
  },
};
