import { type Judgement, NUMBERS, OUT, TIMES } from './judgement.ts';
import { entries, part, words } from './look.ts';
import type { Json, JsonPart } from './place.ts';

type Where = NonNullable<Judgement['where']>;

const single = (at: string, on: Judgement['on'], because: string, where?: Where): Judgement => ({
  at,
  on,
  is: 'free',
  because,
  ...(where && { where }),
});

const changesIn = (record: Json): JsonPart[] =>
  entries(record, 'modifications').flatMap((work) => entries(work, 'changes'));

/** Kinds of equipment that a visit fitted or moved. */
const fittedKinds = (record: Json): string[] =>
  changesIn(record).flatMap((change) => {
    const stated = words(change, 'equipmentKind') ?? words(part(change, 'by'), 'equipmentKind');
    return change.kind === 'removed' || stated === undefined ? [] : [stated];
  });

const fits =
  (...kinds: readonly string[]): Where =>
  ({ record }) =>
    !fittedKinds(record).some((kind) => kinds.some((wanted) => kind.includes(wanted)));

const hasInspection = (record: Json): boolean => entries(record, 'inspection', 'tasks').length > 0;
const isOfWhole = (record: Json): boolean => hasInspection(record) && part(record, 'inspection').extent !== 'part';

/** Whether another load of the analysis is of the same item. */
const isOneOfTwo: Where = ({ record, loads, around }) =>
  entries(record, 'electrical', 'loads').filter(({ item }) => item === (loads ?? around).item).length > 1;

/**
 * What a record states once, and that no other part of it requires. Whether such a value is true, only paper or an earlier
 * pack can tell: where one does, these lines do not count. Where a figure, an order or a reference breaks, the change is
 * judged by that first.
 */
export const JUDGED_SINGLE: readonly Judgement[] = [
  single('parts/*/releaseDocument/kind', ['choice'], 'Which document came with a part is on the document'),
  single('parts/*/shelfLifeUntil', [...OUT, ...TIMES], 'The last day of a part is on its document'),
  single(
    'aircraft/energyStores/*/healthPercent',
    ['digit changed', 'digits swapped'],
    'Within the ± of a capacity test',
    ({ around, to }) => Number(to) <= Number(around.healthPercent) + 2,
  ),
  single('electrical/loads/*(/(item|amps|watts|measuredA))?', OUT, 'Another load of the same item stands', isOneOfTwo),
  single('electrical/loads/*/item', ['reference'], 'Another load of the same item stands', isOneOfTwo),
  single('findings/*/severity', ['choice'], 'How grave a finding is, is the judgement of who found it'),
  single('findings(/*)?(/(action|lookAgain/meter))?', [...OUT, 'reference'], 'A finding that nothing refers to'),
  single(
    'findings/*/lookAgain/**',
    [...OUT, ...TIMES, ...NUMBERS],
    'When to look again is the judgement of who found it',
  ),
  single('inspection/tasks/*/reading(/least)?', OUT, 'The result of the task stands without its reading'),
  single(
    'electrical/loads/*/duty',
    ['choice'],
    'How often a new load is on is stated once',
    ({ around }) => around.change === 'added',
  ),
  single('modifications/*', OUT, 'Work that nothing refers to; told where a figure moves'),
  single('modifications/*/(noSupplementNeeded|products(/*)?)', [...OUT, 'flipped'], 'Said of the modification once'),
  single('modifications/*/changes/*/by/onLoan(/until)?', OUT, 'A part on loan, told once'),
  single('modifications/*/tests/*/result', ['choice'], 'A flight test is outstanding', ({ record }) =>
    entries(record, 'modifications').some(({ flightTest }) => flightTest === 'owed'),
  ),
  single(
    'modifications/*/flightTest',
    ['choice'],
    'The flight that names it fulfils it all the same',
    ({ to }) => to === 'owed',
  ),
  single('parts/*/serialOrBatch', OUT, 'A batch that nothing else names'),
  single(
    'surveillance',
    OUT,
    'Nothing that transmits was fitted',
    fits('radio', 'transponder', 'conspicuity', 'transmitting'),
  ),
  single(
    'surveillance/(altimeters|pitotSystems|radioChecks)/*/item',
    [...OUT, 'reference'],
    'Which instrument was tested is told once',
  ),
  single(
    'surveillance/transponderTest/(modeS/communicationFormats|testSet/(calibrationDueOn|isPortable))',
    [...OUT, ...TIMES, 'choice', 'flipped'],
    'A term of the test that is told once',
  ),
  single(
    'surveillance/devices/*/(sourceIntegrityLevel|systemDesignAssurance)',
    [...OUT, ...NUMBERS],
    'As set at the device',
    ({ around }) => around.kind !== 'transponder',
  ),
  single('weighing/hangTests/*/added(Mass|AftOfBolt|BelowBolt)', OUT, 'One hang test of several'),
  single(
    'meters/readings/*/outHours',
    ['digit changed'],
    'Some tenths of an hour',
    ({ around, to }) => Math.abs(Number(around.outHours) - Number(to)) < 0.5,
  ),
  single('asFound/*(/item)?', [...OUT, 'reference'], 'What was found on the list, told once'),
  single(
    'electrical/loads/*/(amps|watts)/**',
    OUT,
    'A new load in one phase',
    ({ loads }) => loads?.change === 'added',
  ),
  single(
    'findings/*/deferral/(untilDate|untilHours|timesCarried|firstDeferredOn)',
    [...OUT, '+1 d', 'digit changed', 'times 10'],
    'A first deferral; its other clock and the limit of the regime bind it',
  ),
  single('findings/*/lookAgain', OUT, 'When to look again is the judgement of who found it'),
  single('asFound/*/by', OUT, 'Who surveyed it; the difference stands there all the same'),
  single(
    '(controls/disturbed|controls/checks)/*(/(axis|travel))?',
    [...OUT, 'choice'],
    'A check beyond those that a disturbed control requires; these are counted',
  ),
  single('controls', OUT, 'Nothing else states that a control was disturbed', ({ record }) => !isOfWhole(record)),
  single(
    'modifications/*/(tests(/*)?(/reference)?|drawings(/*)?|placards(/*)?|by/*|approvedOn|continuedAirworthiness/*)',
    OUT,
    'Which tests, drawings and placards a modification needs is in its data',
  ),
  single(
    'modifications/*/changes/*/(mass|out/*/mass)',
    OUT,
    'The list has the mass of what was removed',
    ({ around }) => typeof around.item === 'string',
  ),
  single(
    'modifications/*/changes/*/(by/)?(serial|partNumber)',
    OUT,
    'The other number still says which part it is',
    ({ around, key }) => ['serial', 'partNumber', 'part'].some((one) => one !== key && around[one] !== undefined),
  ),
  single('modifications/*/changes/*', OUT, 'Work that nothing refers to; told where a figure moves'),
  single('modifications/*/changes/*/item', ['reference'], 'Another item of the list; told where a figure moves'),
  single('meters/landings', OUT, 'Nothing counts landings', ({ record }) =>
    entries(record, 'lives', 'items').every((life) => part(life, 'interval').landings === undefined),
  ),
  single(
    'compass(/(swings/*|serial|loads(/*)?|correctors|directionIndicator(/limitDegPer15Min)?))?',
    OUT,
    'A swing that no work requires',
    fits('radio', 'transponder', 'conspicuity', 'display', 'compass'),
  ),
  single(
    'compass/(swings/*|serial|loads(/*)?|correctors|directionIndicator(/limitDegPer15Min)?)',
    OUT,
    'One state of several; the card of the other stands',
  ),
  single(
    'weighing',
    OUT,
    'The schedule follows by calculation',
    ({ record }) => entries(record, 'baseline', 'equipment').length > 0,
  ),
  single(
    'weighing/(support|cgHeight|level/limitDeg|oilArm|oilMassLimit|distances(/*)?(/limit)?|hangTests(/*)?(/(angleLimitDeg|mass))?|itemsAboard(/*)?|scales/*/corrections(/*)?)',
    OUT,
    'A term of the weighing that stands alone; told where a figure moves',
  ),
  single('weighing/(fuelState|oilState)', ['choice'], 'How it stood on the scales; told where a figure moves'),
  single('electrical/loads/*', OUT, 'A load that is removed', ({ around }) => around.change === 'removed'),
  single(
    'electrical/loads/*(/item)?',
    OUT,
    'A load of an item that the analysis does not ask for, such as a relay',
    ({ record, loads, around }) => fittedKindOf(record, (loads ?? around).item) === 'distribution',
  ),
  single(
    'electrical/loads/*/(bus|circuit)',
    [...OUT, 'reference'],
    'Where a new load is connected is told once',
    ({ loads }) => loads?.change === 'added',
  ),
  single(
    'electrical/loads/*/**',
    [...OUT, ...NUMBERS, 'choice', 'reference', 'flipped'],
    'A load that is removed',
    ({ loads }) => loads?.change === 'removed',
  ),
  single(
    'electrical/loads/*/change',
    ['choice'],
    'A load whose item is not stated',
    ({ around }) => around.item === undefined,
  ),
  single(
    'engineRuns/*/leaksLookedFor',
    [...OUT, 'flipped'],
    'A run before the work',
    ({ around }) => around.when !== 'after',
  ),
  single(
    'engineRuns(/*)?(/when)?',
    [...OUT, 'choice'],
    'A run that no work requires',
    ({ record }) => !isOfWhole(record) && fits('engine', 'propeller', 'battery')({ record, around: {}, key: '' }),
  ),
  single('inspection/programme', OUT, 'The inspection is of a part only', ({ record }) => !isOfWhole(record)),
  single('inspection/tasks/*/duringRun', [...OUT, 'flipped'], 'Said of the task once'),
  single('inspection/tasks/*/finding', ['reference'], 'Another finding of the visit'),
  single('inspection/tasks/*/result', ['choice'], 'Whether a task applies is in the programme'),
  single(
    'bulletins/items/*(/(kind|applicability(/**)?|reason|method|evidence|doneOn|revision))?',
    [...OUT, 'choice'],
    'A bulletin that was assessed at this visit; told where its status does not fit',
  ),
  single('bulletins/sources/*', OUT, 'One source of several'),
  single('signOffs(/*)?(/kind)?', OUT, 'The tasks name who did them'),
  single(
    'surveillance/altimeters(/*(/scale/*)?)?',
    OUT,
    'A test that no work requires, or one point of many',
    fits('altimeter'),
  ),
  single('surveillance/altimeters/*/scale/*', OUT, 'One point of many'),
  single('surveillance/staticSystems(/*)?', OUT, 'A test that no work requires', fits('static')),
  single(
    'surveillance/pitotSystems(/*(/(points(/*)?|leak))?)?',
    OUT,
    'A test that no work requires',
    fits('pitot', 'airspeed'),
  ),
  single(
    'surveillance/(radioChecks(/*)?|interferenceChecked)',
    OUT,
    'A check of a radio that was not touched',
    ({ record, around }) => !isFittedNow(record, around),
  ),
  single(
    'surveillance/interferenceChecked',
    [...OUT, 'flipped'],
    'Nothing that transmits was fitted',
    fits('radio', 'transponder', 'conspicuity', 'transmitting'),
  ),
  single(
    'surveillance/devices/*/(kind|emitterCategory)',
    [...OUT, 'choice'],
    'A device that sends no position of its own: a transponder may be entered as either',
    ({ around }) => around.positionSource === 'none',
  ),
  single('wiring/test/insulationLimitMohm', OUT, 'The values keep it still'),
  single('surveillance/encoder/points/*', OUT, 'One point of many'),
  single(
    'surveillance/devices/*/(positionSource|flightIdentitySet|readBack/flightIdentity)',
    [...OUT, 'choice'],
    'Set at the device; what it sent is read back',
  ),
  single(
    'antennas/items/*/(minimumSpacing|standingWaveLimit|standingWaves(/*)?|bondMilliohm|cable|frontalAreaCm2)',
    OUT,
    'Another measurement of the antenna stands',
  ),
  single(
    'antennas/items/*',
    OUT,
    'A second antenna of an item',
    ({ record, around }) => entries(record, 'antennas', 'items').filter(({ item }) => item === around.item).length > 1,
  ),
  single(
    'wiring/wires/*',
    OUT,
    'A wire that was laid at this visit, on no other list',
    ({ around }) => around.change === 'added',
  ),
  single('wiring/connectors/*/pins/*', OUT, 'A contact without a wire', ({ around }) => around.direction === 'spare'),
  single(
    'wiring/wires/*/gauge',
    ['choice'],
    'A signal wire, which no protection asks for a size',
    ({ around }) => around.circuit === undefined,
  ),
  single('wiring/wires/*/gauge', ['choice'], 'A thicker wire', ({ around, to }) => Number(to) < Number(around.gauge)),
  single(
    'wiring/(found(/*)?(/(identifiedBy|isLive))?|connectors/*/item|nearControls(/*)?(/isGuarded)?)',
    [...OUT, 'choice', 'flipped', 'reference'],
    'What was found or laid, told once',
  ),
  single(
    'wiring/nearControls/*/distance',
    ['digits swapped', 'digit changed', 'times 10', 'other unit'],
    'The distance that was measured',
  ),
  single('measurements(/**)?', [...OUT, 'choice', 'reference'], 'A measurement that no work requires'),
  single('flights/*/purpose', ['choice'], 'What a flight was for, beside what it names'),
  single('release/further(/*)?', OUT, 'The inspection is of a part only', ({ record }) => !isOfWhole(record)),
  single('release/limitations(/*)?', OUT, 'A limitation that no finding or modification names', ({ record, value }) =>
    entries(record, 'findings').every(
      ({ limitation }) => limitation === undefined || (value !== undefined && limitation !== value),
    ),
  ),
  single(
    'departure/**',
    ['digit changed', 'digits swapped', 'times 10', 'tenth', ...TIMES, ...OUT],
    'A flight that is planned never stops a release',
  ),
];

function fittedKindOf(record: Json, item: Json | undefined): string | undefined {
  const change = changesIn(record).find((one) => (one.id ?? part(one, 'by').id) === item);
  return change && (words(change, 'equipmentKind') ?? words(part(change, 'by'), 'equipmentKind'));
}

function isFittedNow(record: Json, { item }: JsonPart): boolean {
  if (item === undefined) return false;
  const checks = entries(record, 'surveillance', 'radioChecks').filter((check) => check.item === item);
  return checks.length < 2 && changesIn(record).some((change) => change.id === item || part(change, 'by').id === item);
}
