import { describe, expect, test } from 'vitest';
import { PAPER_NAMES } from '../../../../worker/core/units/paper-size.ts';
import { fixturesIn } from '../../../read-fixture.ts';
import { draftFixture, sealedFixture } from '../../pack/printed-fixture.ts';
import { archivalDefects } from './checks.ts';

const PACKS = fixturesIn('visits').flatMap((name) =>
  PAPER_NAMES.flatMap((paper) => [
    { name, paper, state: 'sealed', printed: sealedFixture },
    { name, paper, state: 'draft', printed: draftFixture },
  ]),
);

describe('every pack keeps every clause', () => {
  test.each(PACKS)('$name on $paper, $state', async ({ name, paper, printed }) => {
    expect(await archivalDefects(await printed(name, paper))).toEqual({});
  });
});
