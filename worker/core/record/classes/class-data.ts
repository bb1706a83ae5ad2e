import type { Message } from '../../text/message.ts';
import type { ControlAxis } from '../control-check.ts';
import type { ProductKind } from '../product.ts';

/** What follows from the class of an aircraft. Directions of control and limits of a type are never here: the record states them. */
export interface ClassData {
  /** Products with a separate log book or card, besides the airframe. */
  products: readonly ProductKind[];
  /** Controls that an aircraft of the class can have. */
  axes: readonly ControlAxis[];
  /** Controls that steer every aircraft of the class in flight: an inspection of the whole aircraft proves each. */
  flightAxes: readonly ControlAxis[];
  /** Whether an aircraft of the class can have fuel, and an engine with oil. */
  canHaveFuel: boolean;
  canHaveOil: boolean;
  /** Usual empty mass as a share of the maximum mass: common practice, no source. */
  emptyShare: { from: number; to: number };
  /** Limits that a record must have. */
  requires: {
    /** Longitudinal envelope. */
    envelope: boolean;
    /** Lateral schedule and limits, or the statement that the manual has none. */
    lateral: boolean;
  };
  /** What is computed in place of an envelope, or in addition to it. */
  computes: readonly ('hang-position' | 'attachment' | 'cockpit-load' | 'hang-angle' | 'both-axes')[];
  /** Cautions for the pilot, each a sentence. */
  cautions: readonly Message[];
  /** More of them where the aircraft has tanks for water. */
  waterCautions?: readonly Message[];
}

/** Controls of most aircraft with an engine. */
export const ENGINE_AXES = ['throttle', 'mixture', 'carburettor-heat', 'propeller-pitch'] as const;

/** Controls on the ground and of the undercarriage. */
export const GROUND_AXES = ['steering', 'wheel-brake', 'landing-gear', 'water-rudder'] as const;

/** Controls of an aircraft with wings that do not turn and surfaces that do. */
export const SURFACE_AXES = ['ailerons', 'elevator', 'rudder', 'trim', 'flaps', 'airbrake'] as const;
