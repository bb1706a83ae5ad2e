import * as m from '../../text/generated/messages.ts';
import { PRACTICE, read } from '../source.ts';
import type { Obligation } from './obligation.ts';

/** Loads, sources, wiring and compass. */
export const ELECTRICAL_OBLIGATIONS: readonly Obligation[] = [
  {
    id: 'load-added',
    title: m.obligation_loadAdded,
    when: { happenings: ['fitted'], traits: ['electrical'] },
    requires: ['load-analysis'],
    notRequiredBy: 'another',
    reasons: ['like-for-like', 'approved-data', 'shown-elsewhere'],
    source: read('AC 43.13-1B paras 11-35 and 11-48'),
  },
  {
    id: 'load-taken-out',
    title: m.obligation_loadTakenOut,
    when: { happenings: ['taken-out'], traits: ['electrical'] },
    requires: ['load-list'],
    notRequiredBy: 'doer',
    reasons: ['like-for-like', 'not-touched', 'not-fitted'],
    source: PRACTICE,
  },
  {
    id: 'battery-changed',
    title: m.obligation_batteryChanged,
    when: { happenings: ['fitted'], kinds: ['battery'] },
    requires: ['battery-entry'],
    notRequiredBy: 'another',
    reasons: ['like-for-like'],
    source: PRACTICE,
  },
  {
    id: 'generator-changed',
    title: m.obligation_generatorChanged,
    when: { happenings: ['fitted', 'moved'], kinds: ['alternator', 'regulator'] },
    requires: ['engine-run'],
    notRequiredBy: 'nobody',
    reasons: [],
    source: read('AC 43.13-1B para 11-35; the run under load is common practice'),
  },
  {
    id: 'loom-fitted',
    title: m.obligation_loomFitted,
    when: { happenings: ['fitted'], kinds: ['loom'] },
    requires: ['continuity-test'],
    notRequiredBy: 'another',
    reasons: ['approved-data', 'shown-elsewhere'],
    source: PRACTICE,
  },
  {
    id: 'compass-moved',
    title: m.obligation_compassMoved,
    when: { happenings: ['fitted', 'moved', 'taken-out'], traits: ['electrical', 'magnetic'] },
    requires: ['compass-swing'],
    notRequiredBy: 'another',
    reasons: ['not-fitted', 'like-for-like', 'approved-data', 'shown-elsewhere'],
    source: read('AC 43.13-1B para 12-37 (after any change of the electrical system)'),
  },
  {
    id: 'compass-shocked',
    title: m.obligation_compassShocked,
    when: {
      happenings: ['occurred'],
      only: ({ occurrence }) =>
        occurrence !== undefined && ['lightning', 'hard-landing', 'long-parking'].includes(occurrence.kind),
    },
    requires: ['compass-swing'],
    notRequiredBy: 'releaser',
    reasons: ['not-fitted', 'shown-elsewhere'],
    source: read('AC 43.13-1B para 12-37'),
  },
];
