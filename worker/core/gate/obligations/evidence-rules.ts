import type { Evidence } from '../../record/not-required.ts';
import * as m from '../../text/generated/messages.ts';
import type { Message } from '../../text/message.ts';
import type { Severity } from '../finding.ts';

/** The finding on a piece of evidence that the work requires and the record lacks. */
export interface EvidenceRule {
  code: string;
  severity: Severity;
  meaning: string;
  remedy: Message;
}

const blocks = (code: string, remedy: Message, meaning: string): EvidenceRule => ({
  code,
  severity: 'blocks',
  remedy,
  meaning,
});

const caution = (code: string, remedy: Message, meaning: string): EvidenceRule => ({
  code,
  severity: 'caution',
  remedy,
  meaning,
});

/** Code, severity, meaning and remedy for each piece of evidence. */
export const EVIDENCE_RULES: Readonly<Record<Evidence, EvidenceRule>> = {
  'transponder-test': blocks(
    'TRANSPONDER_TEST_MISSING',
    m.evidence_transponderTestRemedy,
    'A transponder was fitted, and no test is recorded after it',
  ),
  'read-back': blocks(
    'READ_BACK_MISSING',
    m.evidence_readBackRemedy,
    'A device that sends an address was fitted, set or moved, and its transmission was not received since',
  ),
  'encoder-check': blocks(
    'ENCODER_CHECK_MISSING',
    m.evidence_encoderCheckRemedy,
    'Encoder, transponder or altimeter changed, and the altitude sent was not compared since',
  ),
  'altimeter-test': caution(
    'ALTIMETER_TEST_MISSING',
    m.evidence_altimeterTestRemedy,
    'An altimeter was fitted or opened, and not tested since',
  ),
  'static-test': blocks(
    'STATIC_TEST_MISSING',
    m.evidence_staticTestRemedy,
    'The static system was opened, and not tested since',
  ),
  'pitot-test': blocks(
    'PITOT_TEST_MISSING',
    m.evidence_pitotTestRemedy,
    'The pitot system was opened or its indicator replaced, and not tested since',
  ),
  'radio-check': blocks(
    'RADIO_CHECK_MISSING',
    m.evidence_radioCheckRemedy,
    'Radio or audio changed, and no two-way check is recorded after it',
  ),
  'interference-check': caution(
    'INTERFERENCE_NOT_CHECKED',
    m.evidence_interferenceCheckRemedy,
    'A transmitter or converter was fitted, and interference was not checked',
  ),
  'load-analysis': blocks(
    'LOAD_ANALYSIS_MISSING',
    m.evidence_loadAnalysisRemedy,
    'An electrical item was fitted, and the load analysis does not have it',
  ),
  'load-list': caution(
    'LOAD_STILL_LISTED',
    m.evidence_loadListRemedy,
    'An electrical item was removed, and the load list was not corrected',
  ),
  'battery-entry': blocks(
    'BATTERY_NOT_ANALYSED',
    m.evidence_batteryEntryRemedy,
    'The battery was replaced, and the load analysis has another one',
  ),
  'continuity-test': blocks(
    'CONTINUITY_TEST_MISSING',
    m.evidence_continuityTestRemedy,
    'A loom was fitted, and not tested since',
  ),
  'antenna-check': blocks(
    'ANTENNA_NOT_MEASURED',
    m.evidence_antennaCheckRemedy,
    'A transmitting antenna was fitted or moved, and nothing was measured',
  ),
  'compass-swing': blocks(
    'COMPASS_SWING_OWED',
    m.evidence_compassSwingRemedy,
    'Electrical or magnetic equipment changed, and the compass was not swung since',
  ),
  'control-check': blocks(
    'CONTROL_DIRECTION_NOT_PROVED',
    m.evidence_controlCheckRemedy,
    'A control was disturbed or due for inspection, and its direction was not proved since',
  ),
  'control-travel': caution(
    'CONTROL_TRAVEL_UNSTATED',
    m.evidence_controlTravelRemedy,
    'A control was disturbed, and its travel was not measured since',
  ),
  'free-movement': blocks(
    'FREE_MOVEMENT_NOT_CHECKED',
    m.evidence_freeMovementRemedy,
    'A space with a control was opened, and free movement was not checked since',
  ),
  'second-inspection': blocks(
    'SECOND_INSPECTION_MISSING',
    m.evidence_secondInspectionRemedy,
    'Critical work was not inspected since by somebody who did not do it',
  ),
  'engine-run': blocks(
    'ENGINE_RUN_AFTER_MISSING',
    m.evidence_engineRunRemedy,
    'Work that needs an engine run was done, and no run is recorded after it',
  ),
  'leak-check': blocks(
    'LEAKS_NOT_LOOKED_FOR',
    m.evidence_leakCheckRemedy,
    'Fuel, oil, coolant or engine was worked on, and leaks were not checked since',
  ),
  'new-weighing': blocks(
    'WEIGHING_OWED',
    m.evidence_newWeighingRemedy,
    'The aircraft was painted or covered again, and not weighed since',
  ),
  'flight-test': blocks(
    'FLIGHT_TEST_UNDECIDED',
    m.evidence_flightTestRemedy,
    'Work that can change how the aircraft flies does not state a flight test',
  ),
  'part-document': blocks(
    'INSTALLED_PART_UNTRACED',
    m.evidence_partDocumentRemedy,
    'An item was fitted without entry in the parts trace',
  ),
  'due-line': blocks(
    'DUE_LINE_MISSING',
    m.evidence_dueLineRemedy,
    'An item with a life limit or recurring check was fitted, and the due list does not have it',
  ),
  'bulletin-search': blocks(
    'BULLETIN_SEARCH_MISSING',
    m.evidence_bulletinSearchRemedy,
    'Work that needs a bulletin search was done without one',
  ),
  'due-list': blocks(
    'DUE_LIST_MISSING',
    m.evidence_dueListRemedy,
    'The whole aircraft was inspected, and no due list is recorded',
  ),
  programme: blocks(
    'PROGRAMME_UNSTATED',
    m.evidence_programmeRemedy,
    'The whole aircraft was inspected, and no programme is named',
  ),
  'closing-check': blocks(
    'CLOSING_CHECK_MISSING',
    m.evidence_closingCheckRemedy,
    'Work was done, and it is not recorded that tools were counted back and panels closed',
  ),
  'update-data': blocks(
    'UPDATE_DATA_MISSING',
    m.evidence_updateDataRemedy,
    'Software or settings were updated without naming the document',
  ),
  placard: blocks('PLACARD_MISSING', m.evidence_placardRemedy, 'A locator was removed without placard'),
  'special-inspection': blocks(
    'SPECIAL_INSPECTION_MISSING',
    m.evidence_specialInspectionRemedy,
    'After an occurrence no special inspection is recorded',
  ),
};
