import { describe, expect, test } from 'vitest';
import { readText } from '../../site/browser/bench/record-text.ts';

const TEXT = `{
  "aircraft": { "registration": "Q-SLM", "stations": [{ "id": "a" }, { "id": "b", "1": 2 }] },
  "note~s/1": true
}`;

const shown = (pointer: string): string => {
  const { from, to } = readText(TEXT).placeOf(pointer);
  return TEXT.slice(from, to);
};

describe('readText()', () => {
  test('finds what a pointer names, with its key', () => {
    expect(shown('/aircraft/registration')).toBe('"registration": "Q-SLM"');
    expect(shown('/aircraft/stations/1/id')).toBe('"id": "b"');
    expect(shown('/note~0s~11')).toBe('"note~s/1": true');
  });

  test('tells an index of a list from a key that looks like one', () => {
    expect(shown('/aircraft/stations/1/1')).toBe('"1": 2');
  });

  test('leads to the nearest part around what is not there', () => {
    expect(shown('/aircraft/stations/0/arm')).toMatch(/^\{/);
    expect(shown('/aircraft/engine')).toMatch(/^"aircraft"/);
    expect(shown('/weighing')).toMatch(/^\{/);
  });

  test('says where the text is no JSON, and gives no value', () => {
    const text = '{ "a": 1, }';
    const { value, findings, placeOf } = readText(text);
    expect(value).toBeUndefined();
    expect(findings.map(({ code }) => code)).toEqual(['JSON_BROKEN']);
    expect(placeOf('').from).toBeGreaterThanOrEqual(text.indexOf(','));
  });

  test('refuses what is nested beyond measure as the service does, whether or not it is closed', () => {
    for (const text of ['['.repeat(200_000), `{ "a": ${'['.repeat(200_000)}${']'.repeat(200_000)} }`]) {
      const { value, findings, placeOf } = readText(text);
      expect(value).toBeUndefined();
      expect(findings.map(({ code }) => code)).toEqual(['JSON_TOO_DEEP']);
      expect(placeOf(findings[0]?.pointer ?? '')).toEqual({ from: 0, to: 1 });
    }
  });

  test('stops at the first fault, however deep the brackets are that follow it', () => {
    const text = `\n${'[},'.repeat(100_000)}`;
    const { value, findings, placeOf } = readText(text);
    expect(value).toBeUndefined();
    expect(findings.map(({ code }) => code)).toEqual(['JSON_BROKEN']);
    expect(placeOf('')).toEqual({ from: 2, to: 3 });
  });

  test('refuses a key given twice as the service does', () => {
    expect(readText('{ "a": 1, "a": 2 }').findings.map(({ code }) => code)).toEqual(['JSON_KEY_TWICE']);
  });
});
