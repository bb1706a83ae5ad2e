import { expect, test } from 'vitest';
import { isWatched, warnsInTime } from '../../../../worker/core/calc/electrical/monitoring.ts';
import type { Electrical } from '../../../../worker/core/record/visit.ts';

const SOURCE = { id: 'S', name: 'S', ratedA: 20 };
const ELECTRICAL: Electrical = {
  system: '28-volt',
  altitudeFt: 10_000,
  sources: [SOURCE],
  buses: [{ id: 'B', name: 'B', isAliveOnBattery: true }],
  loads: [],
  circuits: [],
};

test('warnsInTime() counts a warning only where it is fitted and its set point is known and high enough', () => {
  const at = (lowVoltageWarning: NonNullable<Electrical['lowVoltageWarning']>) =>
    warnsInTime({ ...ELECTRICAL, lowVoltageWarning });
  expect(warnsInTime(ELECTRICAL)).toBe(false);
  expect(at({ isFitted: true })).toBe(false);
  expect(at({ isFitted: true, setPointV: 25.9 })).toBe(false);
  expect(at({ isFitted: true, setPointV: 26 })).toBe(true);
  expect(at({ isFitted: false, setPointV: 26 })).toBe(false);
});

test('isWatched() asks by what', () => {
  expect(isWatched({ ...SOURCE, isMonitored: true })).toBe(false);
  expect(isWatched({ ...SOURCE, isMonitored: false, monitoredBy: 'Placard' })).toBe(false);
  expect(isWatched({ ...SOURCE, isMonitored: true, monitoredBy: 'Placard' })).toBe(true);
});
