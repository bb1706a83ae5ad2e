import { describe, expect, test } from 'vitest';
import { type Assessed, draftDocuments } from '../../../worker/core/core.ts';
import { patched } from '../../json-patch.ts';
import { fixturesIn } from '../../read-fixture.ts';
import { RELEASABLE_AT } from '../gate/assess-record.ts';
import { assessed, posted } from './fixture.ts';

const DATE = /^\d{4}-\d{2}-\d{2}$/;
const TIMESTAMP = /^\d{4}-\d{2}-\d{2}T/;
/** The ends of the calendar that four digits of a year can write, as far out as an offset moves them. */
const ENDS = {
  dates: ['0000-01-01', '9999-12-31'],
  timestamps: ['0000-01-01T00:00:00+14:00', '9999-12-31T23:59:59-14:00', '9999-12-31T23:59:59Z'],
};

interface Change {
  path: string;
  value: string;
}

/** Every date and time of a record moved to each end of the calendar; the first entry of a list stands for the others. */
function changesOf(record: unknown): Change[] {
  const places = (value: unknown, at = ''): Change[] =>
    typeof value === 'string'
      ? [{ path: at, value }]
      : Object.entries((value ?? {}) as object).flatMap(([key, entry]) => places(entry, `${at}/${key}`));
  const firsts = new Map(
    places(record)
      .toReversed()
      .map((place) => [place.path.replace(/\/\d+/g, '/*'), place]),
  );
  return [...firsts.values()].flatMap(({ path, value }) => {
    const ends = DATE.test(value) ? ENDS.dates : TIMESTAMP.test(value) ? ENDS.timestamps : [];
    return ends.map((end) => ({ path, value: end }));
  });
}

async function expectFourDigitYears(visit: Assessed, at: string, message: string): Promise<void> {
  const documents = await draftDocuments(visit, at);
  const text = JSON.stringify([visit.results, visit.findings, documents]);
  expect(text, message).not.toMatch(/NaN|undefined|[+-]\d{6}-|\+0\d{5}/);
}

describe('draftDocuments() prints any date that fits the schema', () => {
  for (const name of fixturesIn('visits')) {
    const at = RELEASABLE_AT[name] ?? '';

    test(`${name} with any date or time at an end of the calendar`, async () => {
      const record = posted(name);
      const changes = changesOf(record);
      expect(changes.length).toBeGreaterThan(10);
      for (const { path, value } of changes) {
        const visit = await assessed(patched(record, [{ op: 'replace', path, value }]), at);
        await expectFourDigitYears(visit, at, `${path} ${value}`);
      }
    });

    test(`${name} assessed at an end of the calendar`, async () => {
      for (const end of ENDS.timestamps) await expectFourDigitYears(await assessed(posted(name), end), end, end);
    });
  }

  test('and says at the date itself that it is in the future', async () => {
    const path = '/lives/items/0/lastDone/date';
    const record = patched(posted('nose-wheel-full'), [{ op: 'replace', path, value: '9999-12-31' }]);
    const { findings } = await assessed(record);
    expect(
      findings.filter(({ severity }) => severity === 'blocks').map(({ code, pointer }) => [code, pointer]),
    ).toEqual([['DATE_IN_FUTURE', path]]);
  });
});
