import { describe, expect, test } from 'vitest';
import { generic } from '../../../worker/core/gate/regimes/generic.ts';
import type { Regime, RegimeValue } from '../../../worker/core/gate/regimes/regime.ts';
import { REGIMES } from '../../../worker/core/gate/regimes/table.ts';
import { findingsOf, mayBlockBy, memory, type RuleInput } from '../../../worker/core/gate/rule.ts';
import { RULES } from '../../../worker/core/gate/rules.ts';
import { isRegimeValue, REGIME_VALUE_NAMES } from '../../../worker/core/pack/regime-value-names.ts';
import { fixturesIn, readFixture } from '../../read-fixture.ts';
import { inputOf } from './assess-record.ts';
import { type Reject, rejectedRecord } from './reject.ts';

const BLOCKING = RULES.filter(({ severity }) => severity === 'blocks');

/** A regime that writes down each value that is asked of it. */
function watched(regime: Regime, asked: Set<string>): Regime {
  return new Proxy(regime, {
    get: (target, name) => {
      if (isRegimeValue(String(name))) asked.add(String(name));
      return Reflect.get(target, name) as unknown;
    },
  });
}

/** Inputs of every reject: each field that a rule asks for is there once. */
function everyInput(): RuleInput[] {
  return fixturesIn('rejects').map((name) => {
    const reject = readFixture(`rejects/${name}`) as Reject;
    const { record, at } = rejectedRecord(reject);
    return inputOf(record, at, reject.facts);
  });
}

const INPUTS = everyInput();

describe('values of a regime', () => {
  test.each(RULES.map((rule) => [rule.code, rule] as const))('%s declares those by which it decides', (_, rule) => {
    const asked = new Set<string>();
    for (const input of INPUTS) rule.check({ ...input, regime: watched(input.regime, asked) });
    expect([...asked].filter((name) => !rule.values?.includes(name as RegimeValue))).toEqual([]);
  });

  test('make no rule block if they were not read', () => {
    const unread = Object.fromEntries(
      Object.keys(REGIME_VALUE_NAMES).map((name) => [
        name,
        { ...generic[name as RegimeValue], value: generic[name as RegimeValue].value ?? 1, source: memory('a rule') },
      ]),
    );
    for (const rule of BLOCKING.filter(({ values = [] }) => values.length > 0))
      for (const input of INPUTS)
        expect(findingsOf(rule, { ...input, regime: { ...input.regime, ...unread } }), rule.code).toEqual([]);
  });

  test('silence these rules only, each of which has a caution in its place', () => {
    const silent = REGIMES.flatMap((regime) =>
      BLOCKING.filter(({ values = [] }) => !mayBlockBy(regime, values)).map(({ code }) => `${regime.id}: ${code}`),
    );
    expect(silent).toEqual(['uk-microlight: MAXIMUM_MASS_ABOVE_REGIME']);
    expect(RULES.find(({ code }) => code === 'MAXIMUM_MASS_UNCONFIRMED')?.severity).toBe('caution');
  });
});
