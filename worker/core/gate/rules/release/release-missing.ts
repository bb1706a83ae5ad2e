import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Rule, read } from '../../rule.ts';

export const releaseMissing: Rule = {
  code: 'RELEASE_MISSING',
  severity: 'blocks',
  meaning: 'The record does not say who releases and with what statement',
  remedy: m.releaseMissing_remedy,
  source: read('14 CFR 43.9; ML.A.801; UK ANO 2016 art. 47'),
  check: ({ visit }) => {
    if (visit.release) return undefined;
    return {
      path: ['release'],
      sentence: said(m.releaseMissing_recordNotSayWho),
    };
  },
};
