import type { ShownLoading } from '../calc/loading-sheet.ts';
import * as m from '../text/generated/messages.ts';
import type { Message } from '../text/message.ts';
import type { Printer } from '../text/print.ts';

const NAMES: Readonly<Record<ShownLoading, Message>> = {
  foremost: m.loadingName_foremostLegalLoading,
  rearmost: m.loadingName_rearmostLegalLoading,
  'standard-pilot': m.loadingName_standardPilotAlone,
  'two-standard-persons': m.loadingName_twoStandardPersons,
};

/** The same inside a sentence. */
const CAPTIONS: Readonly<Record<ShownLoading, Message>> = {
  foremost: m.loadingName_foremostLegalLoading2,
  rearmost: m.loadingName_rearmostLegalLoading2,
  'standard-pilot': m.loadingName_standardPilotAlone2,
  'two-standard-persons': m.loadingName_twoStandardPersons2,
};

/** A loading of the loading sheet, as a row of a table names it. */
export function loadingName(kind: ShownLoading, say: Pick<Printer, 'term'>): string {
  return say.text(NAMES[kind]);
}

/** A loading of the loading sheet inside a sentence. */
export function loadingInCaption(kind: ShownLoading, say: Pick<Printer, 'term'>): string {
  return say.text(CAPTIONS[kind]);
}
