import type { HistoryCause } from '../calc/schedule-result.ts';
import type { AdjustmentLine, BudgetComponent } from '../calc/weighing-result.ts';
import * as m from '../text/generated/messages.ts';
import type { Printer } from '../text/print.ts';

type Words = Pick<Printer, 'words'>;

/** The item or the fuel of a line of the reduction. Names that the record gives are printed as they are. */
export function adjustmentName(line: AdjustmentLine, say: Words): string {
  switch (line.kind) {
    case 'item-aboard':
    case 'item-missing':
      return line.item;
    case 'stated-fuel':
      return say.text(m.lineName_fuel, { tank: line.tank });
    case 'usable-fuel':
      return say.text(m.lineName_usableFuel, { tank: line.tank });
    case 'unusable-fuel':
      return say.text(m.lineName_unusableFuel, { tank: line.tank });
  }
}

/** A component of the uncertainty budget. */
export function budgetName(component: BudgetComponent, say: Words): string {
  switch (component.kind) {
    case 'scale-error-limit':
      return say.text(m.lineName_scaleErrorLimitCertificate, { scale: component.scale });
    case 'display-step':
      return say.text(m.lineName_stepDisplay, { point: component.point });
    case 'arm-as-measured':
      return say.text(m.lineName_armMeasured, { point: component.point });
    case 'scatter':
      return say.text(m.lineName_scatterRuns, { point: component.point, runs: component.runs });
    case 'mass-as-stated':
      return say.text(m.lineName_massStated, { line: adjustmentName(component.line, say) });
  }
}

/** Why the empty mass changed. */
export function historyReason(cause: HistoryCause, say: Words): string {
  switch (cause.kind) {
    case 'stated':
      return cause.reason;
    case 'baseline':
      return cause.reference;
    case 'modification':
      return `${cause.modification} ${cause.title}`;
    case 'record-corrected':
      return say.text(m.lineName_recordCorrectedFound);
    case 'weighed':
      return say.text(m.weighed);
  }
}
