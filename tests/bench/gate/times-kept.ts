import { entries, part, words } from './look.ts';
import type { Json, JsonPart } from './place.ts';
import { brokenIn, inOrder, moment, type Statement } from './statement.ts';

const arrivalOf = (record: Json): number | undefined => moment(words(part(record, 'visit'), 'arrivedAt'));
const endOf = (record: Json): number | undefined => moment(words(part(record, 'visit'), 'workEndedAt'));

/** Times of work that every visit has between its arrival and the end of its work. */
const workTimes = (record: Json): (number | undefined)[] =>
  [
    ...entries(record, 'modifications').flatMap((work) => [
      words(work, 'finishedAt'),
      words(work, 'inspectedAt'),
      ...entries(work, 'tests').map((test) => words(test, 'doneAt')),
    ]),
    ...entries(record, 'inspection', 'tasks').flatMap((task) => [
      words(task, 'at'),
      words(part(task, 'secondInspection'), 'at'),
    ]),
    ...entries(record, 'findings').flatMap((finding) => [words(finding, 'closedAt')]),
    ...['disturbed', 'checks'].flatMap((list) => entries(record, 'controls', list).map((one) => words(one, 'at'))),
    ...entries(record, 'engineRuns').map((run) => words(run, 'at')),
    ...['torques', 'magnetometers', 'balances'].flatMap((list) =>
      entries(record, 'measurements', list).map((one) => words(one, 'at')),
    ),
    ...entries(record, 'flights').map((flight) => words(flight, 'from')),
    ...surveillanceTimes(record),
    ...['isolation', 'insulation', 'disconnect'].map((step) =>
      words(part(record, 'electrical', 'traction', step), 'at'),
    ),
    ...entries(record, 'signOffs').map((sign) => words(sign, 'at')),
    words(part(record, 'weighing'), 'weighedAt'),
    words(part(record, 'wiring', 'test'), 'at'),
    words(part(record, 'compass'), 'swungAt'),
  ].map(moment);

const surveillanceTimes = (record: Json): (string | undefined)[] => [
  ...entries(record, 'surveillance', 'devices').map((device) => words(part(device, 'readBack'), 'at')),
  ...['transponderTest', 'encoder'].map((test) => words(part(record, 'surveillance', test), 'at')),
  ...['altimeters', 'staticSystems', 'pitotSystems', 'radioChecks'].flatMap((list) =>
    entries(record, 'surveillance', list).map((one) => words(one, 'at')),
  ),
];

/** Times and days of a record that must follow each other. */
export const TIMES_KEPT: readonly Statement[] = [
  {
    says: 'work before the arrival, or after the end of the work',
    broken: (record) =>
      brokenIn(workTimes(record), (time) => inOrder(arrivalOf(record), time) && inOrder(time, endOf(record))),
  },
  {
    says: 'work after the release',
    broken: (record, at) =>
      brokenIn([...workTimes(record), endOf(record), arrivalOf(record)], (time) => inOrder(time, moment(at))),
  },
  {
    says: 'a visit that ended before it began',
    broken: (record) => brokenIn([endOf(record)], (end) => inOrder(arrivalOf(record), end)),
  },
  {
    says: 'a finding closed before it was found, or found outside the visit',
    broken: (record) =>
      brokenIn(entries(record, 'findings'), (finding) => {
        const [found, closed] = [moment(words(finding, 'foundAt')), moment(words(finding, 'closedAt'))];
        const isCarried = 'deferral' in finding || 'declined' in finding;
        return (
          inOrder(found, closed) && (isCarried || inOrder(arrivalOf(record), found)) && inOrder(found, endOf(record))
        );
      }),
  },
  {
    says: 'a day that still lies ahead, of something done',
    broken: (record, at) => brokenIn(daysDone(record), (day) => inOrder(day, at.slice(0, 10))),
  },
  {
    says: 'a baseline of before its own weighing, or a history out of order',
    broken: (record) => {
      const baseline = part(record, 'baseline');
      const days = entries(baseline, 'history').map((line) => words(line, 'date') ?? '');
      return (
        brokenIn([words(baseline, 'weighedOn')], (day) => inOrder(day, words(baseline, 'date'))) +
        brokenIn(days.slice(1), (day) => inOrder(days[days.indexOf(day) - 1], day))
      );
    },
  },
  {
    says: 'a part fitted before the date of its paper, or outside its shelf life',
    broken: (record) =>
      brokenIn(entries(record, 'parts'), (item) => {
        const fitted = words(item, 'fittedOn');
        return (
          inOrder(words(part(item, 'releaseDocument'), 'date'), fitted) &&
          inOrder(fitted, words(item, 'shelfLifeUntil'))
        );
      }),
  },
];

const daysDone = (record: Json): (string | undefined)[] => [
  ...entries(record, 'lives', 'items').map((life) => words(part(life, 'lastDone'), 'date')),
  ...entries(record, 'bulletins', 'items').map((bulletin) => words(bulletin, 'doneOn')),
  ...entries(record, 'parts').flatMap((item) => [
    words(item, 'fittedOn'),
    words(part(item, 'releaseDocument'), 'date'),
  ]),
  ...entries(record, 'weighing', 'scales').map((scale) => words(scale, 'calibratedOn')),
  ...entries(record, 'findings').map((finding) => words(part(finding, 'deferral'), 'firstDeferredOn')),
  ...entries(record, 'modifications').map((work) => words(work, 'approvedOn')),
  ...entries(record, 'aircraft', 'energyStores').map((store) => words(store, 'healthMeasuredOn')),
  ...entries(record, 'attachments').map((file) => words(file, 'takenAt')?.slice(0, 10)),
  words(part(record, 'bulletins'), 'searchedOn'),
  words(part(record, 'baseline'), 'date'),
];

/** Whether work fitted or removed single items; another undercarriage is not near the compass. */
const isOfEquipment = (work: JsonPart): boolean => entries(work, 'changes').some(({ kind }) => kind !== 'exchanged');

const finishedOf = (works: readonly JsonPart[]): number | undefined => {
  const times = works.flatMap((work) => moment(words(work, 'finishedAt')) ?? []);
  return times.length === 0 ? undefined : Math.max(...times);
};

/** Tests that name the item that they are of. */
const testsOfItems = (record: Json): { item: Json | undefined; at: string | undefined }[] => [
  ...entries(record, 'surveillance', 'devices').map((device) => ({
    item: device.item,
    at: words(part(device, 'readBack'), 'at'),
  })),
  ...['altimeters', 'staticSystems', 'pitotSystems', 'radioChecks'].flatMap((list) =>
    entries(record, 'surveillance', list).map((test) => ({ item: test.item, at: words(test, 'at') })),
  ),
];

/** When an item was fitted at this visit, if it was. */
function fittedAt(record: Json, item: Json | undefined): number | undefined {
  const work = entries(record, 'modifications').find((one) =>
    entries(one, 'changes').some((change) => (change.id ?? part(change, 'by').id) === item && item !== undefined),
  );
  const change = entries(work, 'changes').find((one) => (one.id ?? part(one, 'by').id) === item);
  return moment(words(change ?? {}, 'doneAt')) ?? moment(words(work ?? {}, 'finishedAt'));
}

/** Evidence that must not be older than what it proves, nor stand on something that had expired. */
export const EVIDENCE_KEPT: readonly Statement[] = [
  {
    says: 'a control checked before it was disturbed',
    broken: (record) =>
      brokenIn(entries(record, 'controls', 'disturbed'), (disturbed) =>
        entries(record, 'controls', 'checks').some(
          (check) =>
            check.axis === disturbed.axis && inOrder(moment(words(disturbed, 'at')), moment(words(check, 'at')) ?? 0),
        ),
      ),
  },
  {
    says: 'a weighing before the last change of equipment',
    broken: (record) => {
      const works = entries(record, 'modifications').filter((work) => entries(work, 'changes').length > 0);
      return brokenIn([moment(words(part(record, 'weighing'), 'weighedAt'))], (time) =>
        inOrder(finishedOf(works), time),
      );
    },
  },
  {
    says: 'a compass swung before the last work was finished',
    broken: (record) =>
      brokenIn([moment(words(part(record, 'compass'), 'swungAt'))], (time) =>
        inOrder(finishedOf(entries(record, 'modifications').filter(isOfEquipment)), time),
      ),
  },
  {
    says: 'no test of a device since it was fitted',
    broken: (record) => {
      const tests = testsOfItems(record);
      return brokenIn(tests, ({ item }) =>
        tests.some((test) => test.item === item && inOrder(fittedAt(record, item), moment(test.at))),
      );
    },
  },
  {
    says: 'an engine run after the work, from before it',
    broken: (record) => {
      const tasks = entries(record, 'inspection', 'tasks').filter(({ kind }) => kind === 'engine');
      const times = tasks.flatMap((task) => moment(words(task, 'at')) ?? []);
      const last = times.length === 0 ? undefined : Math.max(...times);
      const runs = entries(record, 'engineRuns').filter(({ when }) => when === 'after');
      return brokenIn(runs, (run) => inOrder(last, moment(words(run, 'at'))));
    },
  },
  {
    says: 'a second inspection before the work that it inspects',
    broken: (record) =>
      brokenIn(entries(record, 'inspection', 'tasks'), (task) =>
        inOrder(moment(words(task, 'at')), moment(words(part(task, 'secondInspection'), 'at'))),
      ) +
      brokenIn(entries(record, 'modifications'), (work) =>
        inOrder(moment(words(work, 'finishedAt')), moment(words(work, 'inspectedAt'))),
      ),
  },
  {
    says: 'a wiring test before the work was finished',
    broken: (record) =>
      brokenIn([moment(words(part(record, 'wiring', 'test'), 'at'))], (time) =>
        inOrder(finishedOf(entries(record, 'modifications').slice(0, 1)), time),
      ),
  },
  {
    says: 'a sign-off before the work that it signs for',
    broken: (record) =>
      brokenIn(entries(record, 'signOffs'), (sign) => {
        const own = entries(record, 'inspection', 'tasks').filter(
          ({ by, kind }) => by === sign.by && kind === sign.kind,
        );
        return own.every((task) => inOrder(moment(words(task, 'at')), moment(words(sign, 'at'))));
      }),
  },
  {
    says: 'drive work before the drive was isolated',
    broken: (record) => {
      const traction = part(record, 'electrical', 'traction');
      const isolated = moment(words(part(traction, 'isolation'), 'at'));
      return brokenIn(['insulation', 'disconnect'], (step) =>
        inOrder(isolated, moment(words(part(traction, step), 'at'))),
      );
    },
  },
  {
    says: 'a balance after the work, from before that of before it',
    broken: (record) => {
      const balances = entries(record, 'measurements', 'balances');
      return brokenIn(
        balances.filter(({ when }) => when === 'after'),
        (after) =>
          balances.every(
            (one) =>
              one.when !== 'before' ||
              one.of !== after.of ||
              inOrder(moment(words(one, 'at')), moment(words(after, 'at'))),
          ),
      );
    },
  },
  {
    says: 'a measuring device whose calibration had run out',
    broken: (record) => {
      const weighed = words(part(record, 'weighing'), 'weighedAt')?.slice(0, 10);
      const test = part(record, 'surveillance', 'transponderTest');
      return (
        brokenIn(
          entries(record, 'weighing', 'scales'),
          (scale) =>
            inOrder(weighed, words(scale, 'calibrationDueOn')) && inOrder(words(scale, 'calibratedOn'), weighed),
        ) +
        brokenIn([test], () =>
          inOrder(words(test, 'at')?.slice(0, 10), words(part(test, 'testSet'), 'calibrationDueOn')),
        )
      );
    },
  },
  {
    says: 'a certificate that had run out at the release',
    broken: (record, at) =>
      brokenIn(entries(record, 'certificates'), (paper) => inOrder(at.slice(0, 10), words(paper, 'validUntil'))),
  },
  {
    says: 'evidence that is too old: a search for bulletins of over 60 days, a state of health of over a year',
    broken: (record, at) => {
      const daysAgo = (day: string | undefined): number =>
        day === undefined ? 0 : (Date.parse(at) - Date.parse(day)) / 86_400_000;
      return (
        brokenIn([words(part(record, 'bulletins'), 'searchedOn')], (day) => daysAgo(day) <= 60) +
        brokenIn(
          entries(record, 'aircraft', 'energyStores'),
          (store) => daysAgo(words(store, 'healthMeasuredOn')) <= 365,
        )
      );
    },
  },
];
