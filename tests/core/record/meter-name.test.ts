import { expect, test } from 'vitest';
import { countedName, hoursOnMeter } from '../../../worker/core/record/meter-name.ts';
import type { Visit } from '../../../worker/core/record/visit.ts';
import { formatterFor } from '../../../worker/core/text/formatter.ts';

const SAY = formatterFor({ mass: 'kg', arm: 'mm', volume: 'l' });
const meter = (id: string, of: 'airframe' | 'engine', basis: 'flight' | 'tacho' | 'hour-meter') => ({
  ...{ id, of, basis },
  ...{ inHours: 10, outHours: 10 },
});
const visitWith = (...readings: ReturnType<typeof meter>[]) => ({ meters: { readings } }) as Pick<Visit, 'meters'>;
const said = (visit: Pick<Visit, 'meters'>, id: string) => hoursOnMeter(visit, { hours: 40, meter: id }, SAY);

test('hours name the product alone where it has one meter', () => {
  expect(said(visitWith(meter('af', 'airframe', 'flight'), meter('engfl', 'engine', 'flight')), 'engfl')).toBe(
    '40.0\u00a0h, engine',
  );
});

test('of two meters of a product the way of counting tells which, as the release statement has it', () => {
  const visit = visitWith(meter('engfl', 'engine', 'flight'), meter('engta', 'engine', 'tacho'));
  expect(said(visit, 'engfl')).toBe('40.0\u00a0h, engine (flight)');
  expect(said(visit, 'engta')).toBe('40.0\u00a0h, engine (tacho)');
  const [flight] = visit.meters?.readings ?? [];
  expect(flight && countedName(visit.meters?.readings ?? [], flight, SAY)).toBe('engine (flight)');
});

test('of two that count alike, the identifier tells which', () => {
  const visit = visitWith(meter('left', 'engine', 'tacho'), meter('right', 'engine', 'tacho'));
  expect(said(visit, 'left')).toBe('40.0\u00a0h, engine (tacho, left)');
});
