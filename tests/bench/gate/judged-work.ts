import { type Judgement, NUMBERS, OUT, TIMES, WORDS } from './judgement.ts';
import { entries } from './look.ts';

const hurts = (at: string, on: Judgement['on'], because: string): Judgement => ({ at, on, is: 'hurts', because });
const contradicts = (at: string, on: Judgement['on'], because: string): Judgement => ({
  at,
  on,
  is: 'contradicts',
  because,
});
const free = (at: string, on: Judgement['on'], because: string): Judgement => ({ at, on, is: 'free', because });
const nothing = (at: string, on: Judgement['on'], because: string): Judgement => ({ at, on, is: 'nothing', because });

const EVIDENCE = 'The evidence of an obligation is gone';

/** What an inspector says of the work and its evidence, part by part. The first line that covers a change decides. */
export const JUDGED_WORK: readonly Judgement[] = [
  // Names, prices and prose: nothing else states them.
  free(
    '(workshop|departure/destination)(/**)?',
    [...OUT, ...WORDS, 'choice', ...NUMBERS, 'doubled'],
    'A name, a price or a wording of the workshop',
  ),
  free(
    '($schema|visit/summary|**/(name|place|subject|issuer|capacity|location|colour|maker|title|description|note|signal))',
    [...OUT, ...WORDS],
    'A name or a prose text',
  ),
  free(
    'findings/*/(costNow|costIfLeft|consequence|evidence|evidence/*)',
    [...OUT, ...NUMBERS, ...WORDS, 'doubled'],
    'A price, or a sentence for the owner',
  ),
  free('release/**', WORDS, 'A wording of the release'),
  contradicts('release/acknowledgements(/*)?', OUT, 'A caution that nobody accepted'),
  free(
    'worksheet(/**)?',
    [...OUT, ...NUMBERS, ...WORDS, 'reference', 'person', 'doubled'],
    'A plan of work, not its record',
  ),
  {
    ...contradicts('worksheet/*/state', ['choice'], 'A job that is not done, and a release'),
    to: ['in-hand', 'waiting'],
  },
  free('aircraft/(owner|operator)(/**)?', [...OUT, ...WORDS], 'The owner, whom nothing else names'),
  free('aircraft/(yearBuilt|cockpitStates(/**)?|address24)', [...OUT], 'Told for print'),
  free('aircraft/(levelling|datum|model|regime)', WORDS, 'Stated once'),
  free(
    'attachments(/**)?',
    [...OUT, ...WORDS, ...TIMES, 'choice', 'reference', 'person', 'doubled'],
    'A picture that nothing refers to',
  ),
  nothing(
    '(bulletins/sources|modifications/*/(drawings|continuedAirworthiness)|findings/*/evidence|people/*/scope)/*',
    ['doubled'],
    'Said twice',
  ),
  nothing('aircraft(/categories/*)?/envelope/*', ['doubled'], 'The same corner twice'),

  // Aircraft.
  hurts('aircraft/class', ['choice'], 'The rules of another class'),
  {
    ...contradicts('aircraft/undercarriage', ['choice'], 'Weighed on other wheels'),
    where: ({ record }) => entries(record, 'weighing', 'points').length > 0,
  },
  hurts('aircraft(/configurations/*)?/undercarriage', ['choice'], 'The wheels of another aircraft'),
  hurts(
    'aircraft(/configurations/*)?(/categories/*)?/envelopeLowerEdge',
    ['choice', ...OUT],
    'The lower edge is a limit, or is none',
  ),
  free('aircraft/limitsFrom', ['choice', ...OUT], 'Whose limits they are: nothing else states it'),
  free('aircraft(/configurations/*)?/seats', NUMBERS, 'Only the stations count'),
  hurts(
    'aircraft/(noLateralLimits|suspension|hangBolt|levelAttitude|energyStores(/*)?|energyUse)',
    OUT,
    'A limit, or the proof that none is owed, is gone',
  ),
  free(
    'aircraft/stations/*/kind',
    ['choice'],
    'The kind of a place decides who sits there; computed where it does harm',
  ),
  hurts('aircraft/stations/*/isNonLifting', [...OUT, 'flipped'], 'A load of the parts that do not lift'),
  hurts('aircraft/stations/*/isDumpable', [...OUT, 'flipped'], 'Water that can, or cannot, be dumped'),
  hurts(
    'aircraft/(engine|propeller|products/*)/fitted(/(on|at|sinceNew|sinceOverhaul|meter))?',
    OUT,
    'The time of a product is gone',
  ),
  hurts('aircraft/engine/hasOilSump', ['flipped', ...OUT], 'The oil counts in the empty mass, or does not'),
  hurts('aircraft/(products/*|engine|propeller)', OUT, 'A product whose lives and bulletins count is gone'),

  // Baseline and what was found.
  hurts('baseline', OUT, 'Nothing to compare the weighing with'),
  free(
    'baseline/(history(/*)?|equipmentRevision|reference|source|basis|weighedOn)',
    [...OUT, ...WORDS, 'choice', ...TIMES, 'doubled'],
    'What came before the schedule: nothing else states it',
  ),
  free('baseline/history/*/**', [...NUMBERS, ...TIMES, ...WORDS], 'An earlier line of the history'),
  hurts('baseline/equipment(/*)?', OUT, 'An item aboard is on no list'),
  free('baseline/equipment/*/required', ['flipped', ...OUT], 'Which items are required is in the flight manual'),
  hurts('asFound(/*)?', OUT, 'A difference that was found is on no list'),
  hurts('meters(/readings(/*)?|/counters(/*)?|/landings)?', OUT, 'The hours and landings of the aircraft are gone'),
  free(
    'meters/(groundRunMinutes|landingsIn|readings/*/inHours|counters/*/in|note)',
    [...NUMBERS, ...OUT, ...WORDS],
    'Nothing is due by it',
  ),
  hurts('meters/readings/*/of', ['choice'], 'Hours of another product'),
  free('meters/readings/*/basis', ['choice'], 'How it counts; nothing is computed by it'),

  // Modifications.
  hurts(
    'modifications(/*)?(/(changes|changes/*|tests|tests/*|placards|placards/*|supplement|continuedAirworthiness|continuedAirworthiness/*|inspectedBy|inspectedAt|classifiedBy|basis|approvalReference|approvedOn|by/*|drawings|drawings/*))?',
    OUT,
    EVIDENCE,
  ),
  { ...hurts('modifications/*/classification', ['choice'], 'Approved as a lighter class of change'), from: ['major'] },
  free('modifications/*/classification', ['choice'], 'Approved as a heavier, or an equal, class of change'),
  hurts('modifications/*/(placards/*|supplement)/state', ['choice'], 'Owed and in place are exchanged'),
  { ...free('modifications/*/flightTest', OUT, 'None is owed'), from: ['none'] },
  hurts('modifications/*/flightTest', ['choice', ...OUT], 'A flight test that is owed, or was not flown'),
  hurts('modifications/*/tests/*/(result|doneAt|by|reference)', ['choice', ...OUT], EVIDENCE),
  hurts('modifications/*/noSupplementNeeded', ['flipped', ...OUT], 'A supplement is owed'),
  free('**/(massLimit|volumeLimit|armLimit|required)', [...OUT, 'flipped'], 'The judgement of who states it'),
  free('modifications/*/changes/*/fate', ['choice'], 'Where the part went'),
  free('modifications/*/changes/*/(massSource|what|from|to|part)', ['choice', ...WORDS, ...OUT], 'Stated once'),
  hurts('modifications/*/changes/*/(by/)?(onLoan|serial|partNumber|part)', OUT, 'Which part was fitted is gone'),

  // Wiring and electrics.
  hurts('wiring/wires/*/(continuity|insulationMohm)', [...OUT, 'choice'], EVIDENCE),
  hurts('wiring/test', OUT, EVIDENCE),
  contradicts('wiring/wires/*/(from|to)/pin', WORDS, 'A pin that the connector does not have'),
  contradicts('wiring/wires/*/(from|to)/(at|pin)', ['reference', ...OUT], 'The wire ends elsewhere'),
  hurts('wiring/wires/*/gauge', ['choice'], 'A wire too thin for its protection, or another than is fitted'),
  contradicts('wiring/wires/*/circuit', ['reference', ...OUT], 'The wire of another circuit'),
  free(
    'wiring/wires/*/(shield|kind|colour|material|gramPerM|lengthM|arm|mark|change)',
    [...OUT, ...WORDS, ...NUMBERS, 'choice'],
    'Stated once; its mass is computed',
  ),
  hurts('wiring(/(wires|connectors|points|found|nearControls)(/*)?)?', OUT, 'A wire that is fitted is on no list'),
  contradicts(
    'wiring/connectors/*/pins/*',
    [...OUT, 'doubled'],
    'A wire ends at a pin that is not there, or there twice',
  ),
  contradicts('wiring/connectors/*/pins/*/pin', WORDS, 'A wire ends at a pin that is not there'),
  {
    ...free(
      'wiring/connectors/*/pins/*/direction',
      ['choice'],
      'A contact of both directions fits one of a single one',
    ),
    from: ['both'],
    to: ['in', 'out'],
  },
  contradicts('wiring/connectors/*/pins/*/(direction|level)', ['choice', ...OUT], 'Two ends of a wire that do not fit'),
  hurts('wiring/found/*/(decision|identifiedBy|isLive)', ['choice', 'flipped', ...OUT], 'A wire that nobody knows'),
  hurts('wiring/nearControls/*/(isSecured|isGuarded)', ['flipped'], 'A wire that can jam a control, or is said not to'),
  hurts('wiring/nearControls/*/distance', NUMBERS, 'The distance between wire and control'),
  hurts(
    'electrical(/(loads|circuits|sources|buses|traction|lowVoltageWarning)(/*)?)?',
    OUT,
    'A load, a circuit or a source is on no list',
  ),
  hurts('electrical/traction/(isolation|insulation|disconnect|isolation/secondBy)', OUT, EVIDENCE),
  hurts('electrical/traction/disconnect/isOpened', ['flipped'], 'The trial failed'),
  hurts(
    'electrical/(lowVoltageWarning/isFitted|sources/*/isMonitored|buses/*/isAliveOnBattery|loads/*/isEssential)',
    ['flipped', ...OUT],
    'The battery lasts longer, or the warning comes later, on paper',
  ),
  hurts('electrical/sources/*/monitoredBy', OUT, EVIDENCE),
  hurts('electrical/loads/*/(bus|circuit)', ['reference', ...OUT], 'A load on another bus or circuit'),
  hurts('electrical/loads/*/(change|duty)', ['choice'], 'The load counts otherwise'),
  contradicts(
    'electrical/circuits/*/(gauge|feedsBus|mainFeeder/**)',
    ['choice', 'reference', ...OUT],
    'The wiring says otherwise',
  ),
  free(
    'electrical/circuits/*/(temperatureRating|material|protection/kind)',
    ['choice', ...OUT],
    'Stated once; its ampacity is computed',
  ),
  free(
    'electrical/(circuits/*/measuredDropV|loads/*/measuredA)',
    OUT,
    'The computed figure counts; told where there is none',
  ),
  hurts('electrical/circuits/*/(unprotectedBecause|groundReturnMilliohm)', OUT, EVIDENCE),
  free(
    'electrical/(altitudeFt|engineRpm/**|sources/*/outputBySpeed/**|loads/*/(amps|watts)/**|circuits/*/(runM|ambientC|bundle**|rating/**))',
    NUMBERS,
    'An assumption of the load analysis; computed where it does harm',
  ),
  hurts('antennas/items/*/(bondMilliohm|standingWaves|standingWaves/*|groundPlane|minimumSpacing)', OUT, EVIDENCE),
  hurts('antennas(/items/*)?', OUT, 'An antenna that is fitted is on no list'),
  free('antennas/**', [...NUMBERS, ...WORDS, 'choice', ...OUT, 'flipped'], 'A measured value inside its limits'),

  // Surveillance.
  hurts(
    'surveillance/(devices(/*(/readBack)?)?|transponderTest|encoder|altimeters(/*)?|staticSystems(/*)?|pitotSystems(/*)?|radioChecks(/*)?|interferenceChecked|transponderTest/**|altimeters/*/**|staticSystems/*/**|pitotSystems/*/**|devices/*/**|encoder/points/*)',
    OUT,
    EVIDENCE,
  ),
  hurts('surveillance/**', ['flipped'], 'A check that failed, or is said to have been passed'),
  hurts(
    'surveillance/devices/*/(kind|emitterCategory|positionSource)',
    ['choice'],
    'The device tells others something untrue',
  ),
  hurts(
    'surveillance/devices/*/(sourceIntegrityLevel|systemDesignAssurance)',
    NUMBERS,
    'The device tells others something untrue',
  ),
  hurts('surveillance/transponderTest/class', ['choice'], 'Tested by the limits of another class'),
  hurts(
    'surveillance/transponderTest/modeS/communicationFormats',
    ['choice'],
    'A check that failed, or is said not to be owed',
  ),
  hurts('surveillance/**/(testSet/serial|with)', OUT, EVIDENCE),

  // Compass, engine, flights, controls.
  free('compass/swings/*/readings/*', OUT, 'One heading of many; the card is computed'),
  hurts('compass(/(swings/*|directionIndicator|loads|loads/*|serial))?', OUT, EVIDENCE),
  hurts('compass/(engineRunning|level)', ['flipped'], 'Swung otherwise than in flight'),
  contradicts('compass/swings/*/state', ['choice'], 'Two swings of the same state'),
  hurts('compass/reference', ['choice'], 'Headings by the other north'),
  free('engineRuns/*/(airTemperatureC|pressureHpa|values/*/resolution)', OUT, 'Told beside the values'),
  hurts('engineRuns(/*(/(values/*|restraint|heldBy|leaksLookedFor))?)?', OUT, EVIDENCE),
  hurts('engineRuns/*/(when|leaksLookedFor)', ['choice', 'flipped'], EVIDENCE),
  hurts('flights(/*(/(for|for/*|openItems|openItems/*))?)?', OUT, EVIDENCE),
  hurts('flights/*/(result|purpose)', ['choice'], 'A flight that showed something else'),
  hurts('measurements(/(torques|magnetometers|balances)(/*)?(/readings/*)?)?', OUT, EVIDENCE),
  hurts('measurements/torques/*/unit', ['choice'], 'Tightened in another unit'),
  hurts('measurements/balances/*/(when|of|readings/*/what)', ['choice'], EVIDENCE),
  free('controls/disturbed(/*)?', OUT, 'The check that it requires stands there all the same'),
  hurts('controls(/checks(/*)?)?(/(secondBy|travel|control))?', OUT, EVIDENCE),
  hurts(
    'controls/checks/*/(isDirectionRight|isFullAndFree)',
    ['flipped'],
    'The control goes the wrong way, or not all the way',
  ),
  hurts('controls/(checks|disturbed)/*/axis', ['choice'], 'Another control was checked than was disturbed'),

  // Inspection, bulletins, lives, findings.
  free(
    'inspection/tasks/*',
    OUT,
    'The list of tasks is in the programme, not in the record; told where something names it',
  ),
  {
    ...free('inspection/tasks/*/critical', ['flipped', ...OUT], 'The second inspection stands there all the same'),
    from: [true],
  },
  free('inspection/tasks/*/value', OUT, 'A reading in words, of which the record does not say that there is one'),
  hurts(
    'inspection(/tasks/*)?(/(by|at|result|value|finding|secondInspection|critical|toolsAccountedFor|panelsClosed|programme))?',
    OUT,
    EVIDENCE,
  ),
  hurts(
    'inspection/(toolsAccountedFor|panelsClosed|tasks/*/critical)',
    ['flipped'],
    'Not done, or need not be looked at twice',
  ),
  { ...hurts('inspection/tasks/*/result', ['choice'], 'A task that was not done'), to: ['not-applicable'] },
  contradicts('inspection/tasks/*/result', ['choice'], 'A result without its finding, or a failure in a release'),
  free('inspection/tasks/*/(kind|reference)', ['choice', ...OUT], 'Whoever did it may do that, too; said where not'),
  free('inspection/**', WORDS, 'A wording of the work list'),
  hurts('bulletins(/(items|items/*|searchedOn|sources|sources/*))?', OUT, EVIDENCE),
  hurts(
    'bulletins/items/*/(evidence|doneOn|by|method|reason|nextDueDate|nextDueHours|applicability/**)',
    OUT,
    EVIDENCE,
  ),
  {
    ...free('bulletins/items/*/status', ['choice'], 'Declined, which a bulletin that does not bind may be'),
    to: ['declined'],
  },
  {
    ...free('bulletins/items/*/status', ['choice'], 'Open, though it does not apply: the safe side'),
    from: ['not-applicable'],
    to: ['open'],
  },
  contradicts('bulletins/items/*/status', ['choice'], 'The status does not fit its evidence'),
  hurts('bulletins/items/*/applicability/product', ['choice'], 'A bulletin of another product'),
  hurts(
    'lives(/items/*)?(/(meter|counters|counters/*|product|product/serial|dueAfter))?',
    ['choice', ...OUT],
    'A term is gone, or of another product',
  ),
  hurts('lives/items/*/product/kind', ['choice'], 'A term of another product'),
  free('lives/hoursPerYear', [...NUMBERS, ...OUT], 'Only a forecast'),
  hurts('findings(/*)?', OUT, 'A finding is lost'),
  contradicts('findings/*/disposition', ['choice', ...OUT], 'The disposition does not fit what was done'),
  hurts(
    'findings/*/(action|closedBy|closedAt|deferral|declined|lookAgain|deferral/(untilDate|untilHours|placard|meter)|lookAgain/**)',
    OUT,
    EVIDENCE,
  ),
  hurts('findings/*/deferral/ownerInformed', ['flipped'], 'The owner does not know'),
  hurts('carried(/*)?(/(reason|evidence))?', OUT, EVIDENCE),
  hurts('carried/*/answer', ['choice'], 'An open item ends otherwise'),
  free(
    '(findings|carried|lives|bulletins|flights|controls|engineRuns|surveillance|compass|measurements)/**',
    [...WORDS],
    'A wording, or a name that is stated once',
  ),

  // Parts and weighing.
  hurts(
    'parts(/*)?(/(releaseDocument|releaseDocument/date|serialOrBatch|partNumber|condition|shelfLifeUntil|fittedOn|receivedBy))?',
    OUT,
    EVIDENCE,
  ),
  hurts('parts/*/releaseDocument/kind', ['choice'], 'Another paper than the part came with'),
  free('parts/*/(quantity|supplier|condition)', [...NUMBERS, ...OUT, 'choice'], 'Stated once'),
  hurts('weighing', OUT, EVIDENCE),
  hurts(
    'weighing/(fuelState|oilState|fuelAboard|fuelAboard/*|oilArm|itemsAboard(/*)?|itemsMissing(/*)?|scales/*|scales/*/(certificate|calibratedOn|corrections|corrections/*)|points/*|points/*/(tare|lateralArm)|checkedBy|cgHeight|hangTests(/*)?|distances(/*)?|support)',
    OUT,
    EVIDENCE,
  ),
  hurts('weighing/(fuelState|oilState)', ['choice'], 'Another state than it was weighed in'),
  contradicts('weighing/points/*/side', ['choice'], 'Two points of the same side'),
  free(
    'weighing/points/*/scale',
    ['reference'],
    'A scale may serve two points; computed where their corrections differ',
  ),
  hurts('weighing/indoors', ['flipped'], 'Weighed in the wind, or said not to be'),
  free('weighing/points/*/readings/*', [...OUT, 'doubled'], 'Another number of runs; the mean is computed'),

  // Papers and people.
  hurts('certificates(/*)?(/(validUntil|number|issuer))?', OUT, 'A certificate, or its term, is gone'),
  hurts('certificates/*/kind', ['choice'], 'A certificate that is owed is gone'),
  free('certificates/**', WORDS, 'Stated once'),
  hurts('people/*/(authorisation|validUntil)', OUT, 'The authorisation is gone'),
  free(
    'people/*/(authorisation|name|capacity|scope/*)',
    [...WORDS, ...OUT, 'choice'],
    'Known to the workshop only; said where somebody may not',
  ),
  hurts('signOffs(/*)?(/kind)?', OUT, EVIDENCE),
  hurts('release(/(by|limitations(/*)?|further(/*)?))?', OUT, 'The release, or a limitation of it, is gone'),
  free('departure(/**)?', [...NUMBERS, ...OUT, ...TIMES], 'A flight that is planned never stops a release'),
];
