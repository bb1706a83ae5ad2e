import * as z from 'zod';
import { AntennasResult } from '../calc/antennas/antennas-result.ts';
import { ReleaseClock } from '../calc/clock/clock-result.ts';
import { CompassResult } from '../calc/compass/compass-result.ts';
import { ConfigurationEmpty } from '../calc/configurations/configuration-result.ts';
import { BatterySegment, ElectricalResult, Endurance } from '../calc/electrical/electrical-result.ts';
import { EnergyResult } from '../calc/energy/energy-result.ts';
import { RunComparison } from '../calc/engine/engine-runs-result.ts';
import { LateralResult } from '../calc/lateral/lateral-result.ts';
import { Applies, Due } from '../calc/lives/due-result.ts';
import { ProductTime } from '../calc/lives/product-time-result.ts';
import { CockpitLoad, SuspensionTable } from '../calc/loading/class-loading-result.ts';
import {
  AllowedBaggage,
  CrewFuelRow,
  CrewFuelTable,
  Extremes,
  GroupProposal,
  LeastPilot,
  LoadLimits,
  OTHER_REFUSALS,
  OverLimit,
} from '../calc/loading/loading-result.ts';
import { ChangeLine, EquipmentChangeTotal, EquipmentItem } from '../calc/mass/equipment-change-result.ts';
import { Comparison, Prediction, Residual } from '../calc/mass/prediction-result.ts';
import { HistoryEntry, Schedule } from '../calc/mass/schedule-result.ts';
import { MeasurementsResult } from '../calc/measurements/measurements-result.ts';
import { OpenDue } from '../calc/open-items/open-item-result.ts';
import {
  AddressResult,
  Check,
  LimitCheck,
  MissingItem,
  StaticSystemResult,
  SurveillanceTests,
} from '../calc/surveillance/surveillance-result.ts';
import { MismatchCauses } from '../calc/weighing/causes/causes-result.ts';
import { HangResult } from '../calc/weighing/hang-result.ts';
import { Adjustment, Contribution, WeighingResult } from '../calc/weighing/weighing-result.ts';
import { HarnessMass } from '../calc/wiring/wiring-result.ts';

const said = { name: z.string().describe('In English') };

const Change = EquipmentChangeTotal.extend({
  lines: z.array(ChangeLine.extend({ name: z.string() })),
  equipment: z.array(EquipmentItem).meta({ description: 'The list as it stands after the visit' }),
});

const Weighing = WeighingResult.extend({
  adjustments: z.array(Adjustment.extend(said)),
  budget: z.array(Contribution.extend({ source: z.string().describe('The component in English') })),
});

const RevisedSchedule = Schedule.extend({
  history: z.array(HistoryEntry.extend({ reason: z.string().describe('The cause in English') })),
});

const refused = z.discriminatedUnion('state', [
  ...OTHER_REFUSALS,
  OverLimit.extend({
    limit: z.string().describe('Identifier of the station or the loading limit, else the limit in English'),
  }),
]);
const Cell = z.union([AllowedBaggage, z.object({ refused })]);

const Loading = z.object({
  extremes: Extremes.optional(),
  minimumSoloKg: z.number().optional(),
  leastPilot: LeastPilot.optional(),
  fullFuelKg: z.number(),
  payloadFullFuelKg: z.number(),
  limits: LoadLimits,
  proposals: z.array(GroupProposal).meta({
    description: 'Joint limits that would each keep every permitted loading inside the envelope',
  }),
  suspension: SuspensionTable.optional(),
  cockpitLoads: z.array(CockpitLoad),
  categories: z.array(z.object({ id: z.string(), name: z.string(), limits: LoadLimits })),
  table: CrewFuelTable.extend({ rows: z.array(CrewFuelRow.extend({ cells: z.array(Cell) })) }),
});

const Electrical = ElectricalResult.extend({
  endurance: Endurance.extend({ stretches: z.array(BatterySegment.extend(said)) }).optional(),
});

const Wiring = z.object({
  harness: HarnessMass,
  nets: z.array(z.object({ pins: z.array(z.string()), circuits: z.array(z.string()) })),
});

const figures = z.array(LimitCheck.extend(said));
const checks = z.array(Check.extend(said));

const Surveillance = SurveillanceTests.extend({
  address: AddressResult.optional(),
  devices: z.array(z.object({ id: z.string(), set: z.string().optional(), received: z.string().optional() })),
  transponder: figures,
  modeS: checks,
  transponderOmissions: z.array(z.string()).describe('What is missing of the transponder test, in English'),
  altimeters: z.array(
    z.object({
      figures,
      omissions: z.array(MissingItem.extend({ what: z.string().describe('The figure in English') })),
    }),
  ),
  staticSystems: z.array(StaticSystemResult.extend({ figures, checks })),
  pitotSystems: z.array(z.object({ figures })),
});

/**
 * Results of an assessment in the response: those of calc, in which every code also has its English text. Results that
 * were not computed are left out.
 */
export const AssessmentResults = z
  .object({
    change: Change,
    prediction: Prediction.optional(),
    weighing: Weighing.optional(),
    comparison: Comparison.optional(),
    residual: Residual.optional(),
    causes: MismatchCauses.optional(),
    schedule: RevisedSchedule.optional(),
    loading: Loading.optional(),
    lateral: LateralResult.optional(),
    energy: EnergyResult.optional(),
    hang: HangResult.optional(),
    configurations: z
      .array(ConfigurationEmpty.extend({ loading: Loading, lateral: LateralResult.optional() }))
      .meta({ description: 'Every other configuration that has an empty condition' }),
    electrical: Electrical.optional(),
    wiring: Wiring.optional(),
    antennas: AntennasResult.optional(),
    surveillance: Surveillance.optional(),
    compass: CompassResult.optional(),
    engineRuns: z.array(RunComparison),
    measurements: MeasurementsResult.extend({
      torques: figures,
      magnetometers: z.array(z.object({ figures })),
      balances: z.array(z.object({ figures })),
    }).optional(),
    due: z.array(Due),
    comingDue: z.array(OpenDue).meta({
      description: 'Maintenance items, bulletins, deferrals and findings to review again, the first due at the top',
    }),
    products: z.array(ProductTime),
    clock: ReleaseClock,
    bulletins: z.array(z.object({ id: z.string(), applies: Applies })),
  })
  .meta({ title: 'Results', description: 'Everything computed, unrounded, in kg, mm, l and the units names end in' });
export type AssessmentResults = z.infer<typeof AssessmentResults>;
