import * as m from '../../text/generated/messages.ts';
import { PRACTICE, read } from '../source.ts';
import type { Obligation } from './obligation.ts';

/** Loads, sources, wiring and compass. */
export const ELECTRICAL_OBLIGATIONS: readonly Obligation[] = [
  {
    id: 'load-added',
    title: m.obligation_loadAdded,
    when: { happenings: ['fitted'], traits: ['electrical'] },
    owes: ['load-analysis'],
    notOwedBy: 'another',
    reasons: ['like-for-like', 'maker-approved-data', 'shown-elsewhere'],
    source: read('AC 43.13-1B paras 11-35 and 11-48'),
  },
  {
    id: 'load-taken-out',
    title: m.obligation_loadTakenOut,
    when: { happenings: ['taken-out'], traits: ['electrical'] },
    owes: ['load-list'],
    notOwedBy: 'doer',
    reasons: ['like-for-like', 'not-touched', 'not-fitted'],
    source: PRACTICE,
  },
  {
    id: 'battery-changed',
    title: m.obligation_batteryChanged,
    when: { happenings: ['fitted'], kinds: ['battery'] },
    owes: ['battery-entry'],
    notOwedBy: 'another',
    reasons: ['like-for-like'],
    source: PRACTICE,
  },
  {
    id: 'generator-changed',
    title: m.obligation_generatorChanged,
    when: { happenings: ['fitted', 'moved'], kinds: ['alternator', 'regulator'] },
    owes: ['engine-run'],
    notOwedBy: 'nobody',
    reasons: [],
    source: read('AC 43.13-1B para 11-35; the run under load is common practice'),
  },
  {
    id: 'loom-fitted',
    title: m.obligation_loomFitted,
    when: { happenings: ['fitted'], kinds: ['loom'] },
    owes: ['continuity-test'],
    notOwedBy: 'another',
    reasons: ['maker-approved-data', 'shown-elsewhere'],
    source: PRACTICE,
  },
  {
    id: 'compass-moved',
    title: m.obligation_compassMoved,
    when: { happenings: ['fitted', 'moved', 'taken-out'], traits: ['electrical', 'magnetic'] },
    owes: ['compass-swing'],
    notOwedBy: 'another',
    reasons: ['not-fitted', 'like-for-like', 'maker-approved-data', 'shown-elsewhere'],
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
    owes: ['compass-swing'],
    notOwedBy: 'releaser',
    reasons: ['not-fitted', 'shown-elsewhere'],
    source: read('AC 43.13-1B para 12-37'),
  },
];
