import { entries, figure, figures, part, words } from './look.ts';
import type { Json, JsonPart } from './place.ts';
import { brokenIn, inOrder, type Statement } from './statement.ts';

const between =
  (low: string, value: string, high: string) =>
  (of: JsonPart): boolean =>
    inOrder(figure(of, low), figure(of, value)) && inOrder(figure(of, value), figure(of, high));

const stationsOf = (record: Json): JsonPart[] => entries(record, 'aircraft', 'stations');
const metersOf = (record: Json): JsonPart[] => entries(record, 'meters', 'readings');

/** Figures that stand beside the limits that they must keep, and figures that follow from others. */
export const LIMITS_KEPT: readonly Statement[] = [
  {
    says: 'a value of the engine run outside its own limits',
    broken: (record) =>
      brokenIn(
        entries(record, 'engineRuns').flatMap((run) => entries(run, 'values')),
        between('least', 'value', 'most'),
      ),
  },
  {
    says: 'a torque outside its range',
    broken: (record) => brokenIn(entries(record, 'measurements', 'torques'), between('from', 'value', 'to')),
  },
  {
    says: 'a vibration over its limit',
    broken: (record) =>
      brokenIn(
        entries(record, 'measurements', 'balances').flatMap((balance) => entries(balance, 'readings')),
        (reading) => inOrder(figure(reading, 'value'), figure(reading, 'limit')),
      ),
  },
  {
    says: 'a meter that ran backwards',
    broken: (record) =>
      brokenIn(metersOf(record), (meter) => inOrder(figure(meter, 'inHours'), figure(meter, 'outHours'))) +
      brokenIn(entries(record, 'meters', 'counters'), (counter) =>
        inOrder(figure(counter, 'in'), figure(counter, 'out')),
      ) +
      brokenIn([part(record, 'meters')], (meters) => inOrder(figure(meters, 'landingsIn'), figure(meters, 'landings'))),
  },
  {
    says: 'a meter that ran longer than the aircraft was here',
    broken: (record) => {
      const visit = part(record, 'visit');
      const hours =
        (Date.parse(words(visit, 'workEndedAt') ?? '') - Date.parse(words(visit, 'arrivedAt') ?? '')) / 3_600_000;
      return brokenIn(
        metersOf(record),
        (meter) => !((figure(meter, 'outHours') ?? 0) - (figure(meter, 'inHours') ?? 0) > hours),
      );
    },
  },
  {
    says: 'an insulation below its limit',
    broken: (record) => {
      const traction = part(record, 'electrical', 'traction', 'insulation');
      const limit = figure(part(record, 'wiring', 'test'), 'insulationLimitMohm');
      return (
        brokenIn([traction], (test) => inOrder(figure(test, 'limitMohm'), figure(test, 'resistanceMohm'))) +
        brokenIn(entries(record, 'wiring', 'wires'), (wire) => inOrder(limit, figure(wire, 'insulationMohm')))
      );
    },
  },
  {
    says: 'a protection above its own limit, or a voltage drop above what the circuit allows',
    broken: (record) =>
      brokenIn(entries(record, 'electrical', 'circuits'), (circuit) => {
        const protection = part(circuit, 'protection');
        return inOrder(figure(protection, 'ratingA'), figure(protection, 'limitA'));
      }),
  },
  {
    says: 'a load whose measured current is far from the stated one',
    broken: (record) =>
      brokenIn(entries(record, 'electrical', 'loads'), (load) => {
        const measured = figure(load, 'measuredA');
        const stated = Object.values(part(load, 'amps')).filter((amps) => typeof amps === 'number');
        return measured === undefined || stated.length === 0 || measured <= Math.max(...stated) * 1.5;
      }),
  },
  {
    says: 'a standing wave or a cable loss over its limit',
    broken: (record) =>
      brokenIn(entries(record, 'antennas', 'items'), (antenna) => {
        const cable = part(antenna, 'cable');
        const lossDb =
          (figure(cable, 'lengthM') ?? 0) * (figure(cable, 'lossDbPerM') ?? 0) +
          (figure(cable, 'connectors') ?? 0) * (figure(cable, 'lossDbPerConnector') ?? 0);
        const waves = entries(antenna, 'standingWaves');
        const limit = figure(antenna, 'standingWaveLimit');
        return (
          inOrder(lossDb, figure(cable, 'limitDb')) && waves.every((wave) => inOrder(figure(wave, 'ratio'), limit))
        );
      }),
  },
  {
    says: 'a direction indicator that drifts more than its limit',
    broken: (record) =>
      brokenIn([part(record, 'compass', 'directionIndicator')], (indicator) =>
        inOrder(figure(indicator, 'driftDegPer15Min'), figure(indicator, 'limitDegPer15Min')),
      ),
  },
  {
    says: 'a mass limit of the aircraft above another that includes it',
    broken: (record) => {
      const aircraft = part(record, 'aircraft');
      const most = figure(aircraft, 'maximumMass');
      const within = ['maximumZeroFuelMass', 'maximumLandingMass', 'maximumEmptyMass', 'minimumMass'];
      const corners = entries(aircraft, 'envelope').flatMap((corner) => figure(corner, 'mass') ?? []);
      return (
        brokenIn(within, (key) => inOrder(figure(aircraft, key), most)) +
        brokenIn([Math.max(0, ...corners)], (top) => inOrder(top, most)) +
        brokenIn(stationsOf(record), between('minimumMass', 'minimumMass', 'maximumMass')) +
        brokenIn(stationsOf(record), (station) => inOrder(figure(station, 'maximumMass'), most))
      );
    },
  },
  {
    says: 'a tank with more unusable fuel, more in its table or less than its capacity',
    broken: (record) =>
      brokenIn(stationsOf(record), (tank) => {
        const capacity = figure(tank, 'capacity');
        const levels = entries(tank, 'armByVolume').flatMap((level) => figure(level, 'volume') ?? []);
        const isFull = levels.length === 0 || capacity === undefined || Math.max(...levels) === capacity;
        const rises = levels.every((volume, index) => index === 0 || volume > (levels[index - 1] ?? 0));
        return inOrder(figure(tank, 'unusable'), capacity) && isFull && rises;
      }),
  },
  {
    says: 'a range that is reversed',
    broken: (record) =>
      brokenIn(['airframe', 'emptyRange'], (range) => {
        const { forward, aft } = part(record, 'aircraft', range);
        return typeof forward !== 'number' || typeof aft !== 'number' || forward < aft;
      }) +
      brokenIn([part(record, 'aircraft', 'hangBolt')], (bolt) =>
        inOrder(figure(bolt, 'minimumDeg'), figure(bolt, 'maximumDeg')),
      ),
  },
  {
    says: 'an equipment item, a station or a weighing point outside the airframe',
    broken: (record) => {
      const { forward, aft } = part(record, 'aircraft', 'airframe');
      if (typeof forward !== 'number' || typeof aft !== 'number') return 0;
      const placed = [
        ...stationsOf(record),
        ...entries(record, 'baseline', 'equipment'),
        ...entries(record, 'weighing', 'points'),
        ...entries(record, 'asFound'),
        ...entries(record, 'wiring', 'wires'),
        ...entries(record, 'modifications').flatMap((work) => entries(work, 'changes')),
        ...entries(record, 'antennas', 'items').map((antenna) => part(antenna, 'position')),
      ];
      return brokenIn(placed, (item) => {
        const arm = figure(item, 'arm');
        return arm === undefined || (arm >= forward && arm <= aft);
      });
    },
  },
  {
    says: 'a baseline whose mass, arm and moment, or whose last line of history, do not agree',
    broken: (record) => {
      const baseline = part(record, 'baseline');
      const [mass, arm, moment] = ['emptyMass', 'emptyArm', 'emptyMoment'].map((key) => figure(baseline, key));
      const last = entries(baseline, 'history').at(-1) ?? {};
      const near = (a: number | undefined, b: number | undefined, by: number): boolean =>
        a === undefined || b === undefined || Math.abs(a - b) <= by * Math.max(1, Math.abs(b));
      const product = mass === undefined || arm === undefined ? undefined : mass * arm;
      return (
        brokenIn([product], (value) => near(value, moment, 0.001)) +
        brokenIn([figure(last, 'mass')], (value) => near(value, mass, 0.0005)) +
        brokenIn([figure(last, 'moment')], (value) => near(value, moment, 0.0005)) +
        brokenIn([words(last, 'date')], (date) => date === undefined || date <= (words(baseline, 'date') ?? date))
      );
    },
  },
  {
    says: 'an inventory that weighs more than the empty aircraft',
    broken: (record) => {
      const baseline = part(record, 'baseline');
      const sum = entries(baseline, 'equipment').reduce((total, item) => total + (figure(item, 'mass') ?? 0), 0);
      return brokenIn([sum], (total) => inOrder(total, figure(baseline, 'emptyMass')));
    },
  },
  {
    says: 'a weighing off level, over the capacity of a scale, or with runs that differ by far',
    broken: (record) => {
      const weighing = part(record, 'weighing');
      const level = part(weighing, 'level');
      const limit = figure(level, 'limitDeg') ?? 1;
      const attitude = part(record, 'aircraft', 'levelAttitude');
      const offDeg = (key: string): number => Math.abs((figure(level, key) ?? 0) - (figure(attitude, key) ?? 0));
      const points = entries(weighing, 'points');
      return (
        brokenIn(['longitudinalDeg', 'lateralDeg'], (key) => offDeg(key) <= limit) +
        brokenIn(points, (point) => {
          const scale = entries(weighing, 'scales').find(({ id }) => id === point.scale) ?? {};
          const readings = figures(point, 'readings');
          return readings.every(
            (reading) => inOrder(reading, figure(scale, 'capacity')) && inOrder(figure(point, 'tare'), reading),
          );
        }) +
        brokenIn(points, (point) => {
          const scale = entries(weighing, 'scales').find(({ id }) => id === point.scale) ?? {};
          const readings = figures(point, 'readings');
          const spread = Math.max(...readings) - Math.min(...readings);
          return !(spread > 2 * (figure(scale, 'errorLimit') ?? spread) + 2 * (figure(scale, 'resolution') ?? 0));
        })
      );
    },
  },
  {
    says: 'something done at hours that the meter has not reached',
    broken: (record) =>
      brokenIn(entries(record, 'lives', 'items'), (life) => {
        const own =
          metersOf(record).find(({ id }) => id === life.meter) ??
          metersOf(record).find(({ of }) => of === 'airframe') ??
          {};
        const total =
          (figure(own, 'outHours') ?? Number.POSITIVE_INFINITY) + Math.max(0, figure(own, 'offsetHours') ?? 0);
        return (figure(part(life, 'lastDone'), 'hours') ?? 0) <= total;
      }),
  },
  {
    says: 'a traction battery below its least health or over its cycles',
    broken: (record) =>
      brokenIn(
        entries(record, 'aircraft', 'energyStores'),
        (store) =>
          inOrder(figure(store, 'leastHealthPercent'), figure(store, 'healthPercent')) &&
          inOrder(figure(store, 'cycles'), figure(store, 'maximumCycles')),
      ),
  },
];
