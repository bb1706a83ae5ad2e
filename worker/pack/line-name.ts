import type { HistoryCause } from '../calc/schedule-result.ts';
import type { AdjustmentLine, BudgetComponent } from '../calc/weighing-result.ts';
import type { Printer } from '../text/print.ts';

type Words = Pick<Printer, 'words'>;

/** The item or the fuel of a line of the reduction. Names that the record gives are printed as they are. */
export function adjustmentName(line: AdjustmentLine, say: Words): string {
  switch (line.kind) {
    case 'item-aboard':
    case 'item-missing':
      return line.item;
    case 'stated-fuel':
      return say.words`Fuel, ${line.tank}`;
    case 'usable-fuel':
      return say.words`Usable fuel, ${line.tank}`;
    case 'unusable-fuel':
      return say.words`Unusable fuel, ${line.tank}`;
  }
}

/** A component of the uncertainty budget. */
export function budgetName(component: BudgetComponent, say: Words): string {
  switch (component.kind) {
    case 'scale-error-limit':
      return say.words`Scale ${component.scale}, error limit of its certificate`;
    case 'display-step':
      return say.words`${component.point}, step of the display`;
    case 'arm-as-measured':
      return say.words`${component.point}, arm as measured`;
    case 'scatter':
      return say.words`${component.point}, scatter of ${component.runs} runs`;
    case 'mass-as-stated':
      return say.words`${adjustmentName(component.line, say)}, mass as stated`;
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
      return say.words`Record corrected as found`;
    case 'weighed':
      return say.words`Weighed`;
  }
}
