import type { Finding } from './finding.ts';

/** Findings on figures as typed: others follow from them. */
const RAW = [
  'UNIT_IMPLAUSIBLE',
  'GEOMETRY_IMPOSSIBLE',
  'DENSITY_IMPLAUSIBLE',
  'ARM_OUTSIDE_AIRFRAME',
  'BASELINE_MOMENT_DIFFERS',
  'HISTORY_CONTRADICTED',
  'EMPTY_MASS_NOT_POSITIVE',
] as const;

/** Findings on the weighing itself. */
const WEIGHED = [
  'TARE_UNSTATED',
  'TARE_EXCEEDS_GROSS',
  'RUNS_CONTRADICT',
  'RUNS_DISAGREE',
  'FUEL_STATE_UNSTATED',
  'OIL_STATE_UNSTATED',
  'LEVEL_UNSTATED',
  'LEVEL_EXCEEDED',
  'SCALE_CAPACITY_EXCEEDED',
  'THIRD_POINT_OPPOSITE',
  'PREDICTION_UNBELIEVABLE',
  'PREDICTION_DIFFERS',
] as const;

const METERS = ['METERS_RUN_BACK', 'METERS_JUMP', 'METER_AMBIGUOUS'] as const;
const LISTS = ['REMOVED_ITEM_NOT_LISTED', 'INSTALLED_ITEM_ALREADY_LISTED', 'AS_FOUND_ITEM_NOT_LISTED'] as const;

/** For a finding, those that may be its cause, the likeliest first. Common practice, no source. */
export const CAUSES: Readonly<Record<string, readonly string[]>> = {
  PREDICTION_DIFFERS: [...RAW, ...WEIGHED.slice(0, -2)],
  PREDICTION_UNBELIEVABLE: [...RAW, ...WEIGHED.slice(0, -2)],
  LATERAL_PREDICTION_DIFFERS: [...RAW, ...WEIGHED],
  LEFT_RIGHT_UNEQUAL: [...RAW, 'TARE_UNSTATED', 'RUNS_CONTRADICT', 'RUNS_DISAGREE'],
  EMPTY_CG_OUTSIDE_RANGE: [...RAW, ...WEIGHED],
  EMPTY_MASS_ABOVE_CAP: [...RAW, ...WEIGHED],
  EMPTY_MASS_UNUSUAL: [...RAW, ...WEIGHED],
  MAXIMUM_MASS_EXCEEDED_EMPTY: [...RAW, ...WEIGHED],
  PAYLOAD_BELOW_MINIMUM: [...RAW, ...WEIGHED],
  LEAST_LOAD_TOO_HEAVY: [...RAW, ...WEIGHED],
  ENVELOPE_EXCEEDED_BY_LEGAL_LOADING: [...RAW, ...WEIGHED],
  ENVELOPE_WITHIN_UNCERTAINTY: [...RAW, ...WEIGHED],
  MINIMUM_SOLO_MASS_HIGH: [...RAW, ...WEIGHED],
  COCKPIT_STATE_IMPOSSIBLE: [...RAW, ...WEIGHED],
  NON_LIFTING_MASS_EXCEEDED: [...RAW, ...WEIGHED],
  HANG_ANGLE_OUTSIDE: [...RAW, ...WEIGHED],
  DEFERRAL_EXPIRED: METERS,
  LIFE_EXCEEDED: METERS,
  LIFE_SHORT: METERS,
  LIFE_DONE_AHEAD: METERS,
  DIRECTIVE_OVERDUE: METERS,
  OPEN_ITEM_OVERDUE: METERS,
  OPEN_ITEM_SHORT: METERS,
  REFERENCE_UNKNOWN: LISTS,
  EQUIPMENT_SUM_DIFFERS: [...LISTS, ...RAW],
  READ_BACK_DIFFERS: ['ADDRESS_RESERVED', 'ADDRESS_UNREADABLE', 'ADDRESS_OUTSIDE_STATE_BLOCK'],
};

/** Data by which findings of the same code are places of one point. */
const REPEATED: Readonly<Record<string, readonly string[]>> = {
  AUTHORISATION_EXPIRED: ['person'],
  AUTHORISATION_UNSTATED: ['person'],
  AUTHORISATION_OUT_OF_SCOPE: ['person', 'scope'],
  PERSON_UNKNOWN: ['person'],
  PERSON_NOT_AS_REGISTERED: ['person'],
  SUPERVISOR_UNFIT: ['person'],
  KIND_UNSTATED: [],
  REFERENCE_UNKNOWN: ['reference'],
};

/** Findings that are one point if they are about the same missing part of the record. */
const OF_ONE_PART: ReadonlySet<string> = new Set(['LOAD_ANALYSIS_MISSING', 'READ_BACK_MISSING', 'RADIO_CHECK_MISSING']);

/**
 * Marks each finding that is another place of an earlier one, or that follows from another one. A caution that was
 * accepted is the cause of nothing.
 */
export function withCauses<Text>(findings: readonly Finding<Text>[]): Finding<Text>[] {
  const first = new Map<string, Finding<Text>>();
  const open = new Map<string, Finding<Text>>();
  for (const finding of findings)
    if (finding.acknowledgedBy === undefined && finding.severity !== 'note' && !open.has(finding.code))
      open.set(finding.code, finding);
  return findings.map((finding) => {
    const name = repeatName(finding);
    if (name !== undefined) {
      const known = first.get(name);
      if (known) return { ...finding, follows: placeOf(known) };
      first.set(name, finding);
    }
    const cause = CAUSES[finding.code]?.map((code) => open.get(code)).find((found) => found !== undefined);
    return cause ? { ...finding, follows: placeOf(cause) } : finding;
  });
}

const placeOf = <Text>({ code, pointer }: Finding<Text>): NonNullable<Finding['follows']> => ({ code, pointer });

/** Name that the places of one point share; undefined for a finding that is a point alone. */
function repeatName<Text>({ code, data, pointer }: Finding<Text>): string | undefined {
  const keys = REPEATED[code];
  if (keys) return [code, ...keys.map((key) => data[key])].join(' ');
  return OF_ONE_PART.has(code) ? `${code} ${pointer}` : undefined;
}
