import type { ShownLoading } from '../calc/loading/loading-sheet.ts';
import * as m from '../text/generated/messages.ts';
import { type Message, said, type Value } from '../text/message.ts';

const NAMES: Readonly<Record<ShownLoading, Message>> = {
  foremost: m.loadingName_foremostLegalLoading,
  rearmost: m.loadingName_rearmostLegalLoading,
  'standard-pilot': m.loadingName_standardPilotAlone,
  'two-standard-persons': m.loadingName_twoStandardPersons,
};

/** Names inside a sentence. */
const CAPTIONS: Readonly<Record<ShownLoading, Message>> = {
  foremost: m.loadingName_foremostLegalLoading2,
  rearmost: m.loadingName_rearmostLegalLoading2,
  'standard-pilot': m.loadingName_standardPilotAlone2,
  'two-standard-persons': m.loadingName_twoStandardPersons2,
};

/** Returns the name of a loading in a table row. */
export function loadingName(kind: ShownLoading): Value {
  return said(NAMES[kind]);
}

/** Returns the name of a loading inside a sentence. */
export function loadingInCaption(kind: ShownLoading): Value {
  return said(CAPTIONS[kind]);
}
