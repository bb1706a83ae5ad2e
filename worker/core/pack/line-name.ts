import type { HistoryCause } from '../calc/mass/schedule-result.ts';
import type { AdjustmentLine, BudgetComponent } from '../calc/weighing/weighing-result.ts';
import * as m from '../text/generated/messages.ts';
import { said, type Value } from '../text/message.ts';

/** Returns the item or the fuel of a line of the reduction. Names from the record are printed unchanged. */
export function adjustmentName(line: AdjustmentLine): Value {
  switch (line.kind) {
    case 'item-aboard':
    case 'item-missing':
      return line.item;
    case 'stated-fuel':
      return said(m.lineName_fuel, { tank: line.tank });
    case 'usable-fuel':
      return said(m.lineName_usableFuel, { tank: line.tank });
    case 'unusable-fuel':
      return said(m.lineName_unusableFuel, { tank: line.tank });
  }
}

/** Returns the name of a component of the uncertainty budget. */
export function budgetName(component: BudgetComponent): Value {
  switch (component.kind) {
    case 'scale-error-limit':
      return said(m.lineName_scaleErrorLimitCertificate, { scale: component.scale });
    case 'display-step':
      return said(m.lineName_stepDisplay, { point: component.point });
    case 'arm-as-measured':
      return said(m.lineName_armMeasured, { point: component.point });
    case 'scatter':
      return said(m.lineName_scatterRuns, { point: component.point, runs: component.runs });
    case 'levelling':
      return said(m.lineName_levelling);
    case 'oil-level':
      return said(m.lineName_oilLevel);
    case 'mass-as-stated':
      return said(m.lineName_massStated, { line: adjustmentName(component.line) });
  }
}

/** Returns the reason for a change of the empty mass. */
export function historyReason(cause: HistoryCause): Value {
  switch (cause.kind) {
    case 'stated':
      return cause.reason;
    case 'baseline':
      return cause.reference;
    case 'modification':
      return said(m.lineName_modification, { modification: cause.modification, title: cause.title });
    case 'record-corrected':
      return said(m.lineName_recordCorrectedFound);
    case 'weighed':
      return said(m.weighed);
  }
}
