import { describe, expect, test } from 'vitest';
import {
  carriedIndexOf,
  carriedWith,
  openItemOf,
  type TypedAnswer,
  typedAnswer,
} from '../../site/browser/inspection/carried-answer.ts';
import type { VisitRecord } from '../../worker/client/client.ts';
import { readRecord } from '../../worker/core/record/read-record.ts';
import { readFixture } from '../read-fixture.ts';

const RECORD = readFixture('visits/nose-wheel-full') as VisitRecord;

const TYPED: TypedAnswer = {
  item: ' Q-SLM-P1/F4 ',
  answer: 'closed',
  by: 'jonas',
  at: '2026-11-05T13:10',
  reason: ' Damper overhauled ',
  evidence: 'M1',
};

const point = (code: string, pointer: string, data: Record<string, unknown> = { item: 'Q-SLM-P1/F4' }) => ({
  severity: 'blocks' as const,
  code,
  pointer,
  sentence: '',
  remedy: '',
  data,
});

describe('an answer to an open item', () => {
  test('is an entry that the schema takes, at the time of the workshop wherever the browser is', () => {
    const carried = carriedWith(RECORD, TYPED, undefined);
    expect(carried).toEqual([
      {
        item: 'Q-SLM-P1/F4',
        answer: 'closed',
        by: 'jonas',
        at: '2026-11-05T13:10:00+01:00',
        reason: 'Damper overhauled',
        evidence: 'M1',
      },
    ]);
    expect(readRecord({ ...RECORD, carried }).ok).toBe(true);
  });

  test('leaves out what is not typed', () => {
    const [entry] = carriedWith(RECORD, { ...TYPED, answer: 'repeated', reason: ' ', evidence: '' }, undefined);
    expect(Object.keys(entry ?? {})).toEqual(['item', 'answer', 'by', 'at']);
  });

  test('comes after the others, or takes the place of the one that is changed', () => {
    const before = carriedWith(RECORD, TYPED, undefined);
    const record = { ...RECORD, carried: before };
    const other = { ...TYPED, item: 'Q-SLM-P1/L02' };
    expect(carriedWith(record, other, undefined).map(({ item }) => item)).toEqual(['Q-SLM-P1/F4', 'Q-SLM-P1/L02']);
    expect(carriedWith(record, other, 0).map(({ item }) => item)).toEqual(['Q-SLM-P1/L02']);
    expect(record.carried).toEqual(before);
  });

  test('is typed on from what is on record, its moment in the zone of the workshop', () => {
    const carried = [{ item: 'Q-SLM-P1/F4', answer: 'repeated' as const, by: 'jonas', at: '2026-11-05T12:10:00Z' }];
    expect(typedAnswer({ ...RECORD, carried }, 'Q-SLM-P1/F4', 0)).toEqual({
      item: 'Q-SLM-P1/F4',
      answer: 'repeated',
      by: 'jonas',
      at: '2026-11-05T13:10',
      reason: '',
      evidence: '',
    });
    expect(typedAnswer(RECORD, 'Q-SLM-P1/F4', undefined)).toMatchObject({ item: 'Q-SLM-P1/F4', answer: '', by: '' });
  });
});

describe('a point about an open item', () => {
  test('is known by its code, and names it', () => {
    expect(openItemOf(point('OPEN_ITEM_UNANSWERED', '/carried'))).toBe('Q-SLM-P1/F4');
    expect(openItemOf(point('EQUIPMENT_UNKNOWN', '/modifications/0', { item: 'E1' }))).toBeUndefined();
  });

  test('leads to the answer that is on record already', () => {
    expect(carriedIndexOf(point('CARRIED_INCOMPLETE', '/carried/2/reason'))).toBe(2);
    expect(carriedIndexOf(point('OPEN_ITEM_UNANSWERED', '/carried'))).toBeUndefined();
    expect(carriedIndexOf(point('OPEN_ITEM_PUT_OFF', '/findings/3'))).toBeUndefined();
  });
});
