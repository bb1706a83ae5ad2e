import type { Rule } from '../../rule.ts';
import { addedItemKept } from './added-item-kept.ts';
import { antennaArmDiffers } from './antenna-arm-differs.ts';
import { conversionDiffers } from './conversion-differs.ts';
import { entryTwice } from './entry-twice.ts';
import { fittedNumberUnstated } from './fitted-number-unstated.ts';
import { itemNotAboard } from './item-not-aboard.ts';
import { itemOfOtherKind } from './item-of-other-kind.ts';
import { keptItemNew } from './kept-item-new.ts';
import { loadRemovedAboard } from './load-removed-aboard.ts';
import { loadingLimitVoid } from './loading-limit-void.ts';
import { meterOfAbsentProduct } from './meter-of-absent-product.ts';
import { partEntryIncomplete } from './part-entry-incomplete.ts';
import { partNotOfItem } from './part-not-of-item.ts';
import { partUnused } from './part-unused.ts';
import { pointsOnOneSide } from './points-on-one-side.ts';
import { productNumberNear } from './product-number-near.ts';
import { productSerialDiffers } from './product-serial-differs.ts';
import { productUnnamed } from './product-unnamed.ts';
import { serialTwice } from './serial-twice.ts';
import { serialUnread } from './serial-unread.ts';
import { stationTwice } from './station-twice.ts';

/** Agreement of parts of the record with each other. */
export const AGREEMENT_RULES: readonly Rule[] = [
  antennaArmDiffers,
  itemNotAboard,
  itemOfOtherKind,
  keptItemNew,
  addedItemKept,
  loadRemovedAboard,
  loadingLimitVoid,
  partNotOfItem,
  partUnused,
  pointsOnOneSide,
  productSerialDiffers,
  serialTwice,
  stationTwice,
  meterOfAbsentProduct,
  productUnnamed,
  serialUnread,
  partEntryIncomplete,
  fittedNumberUnstated,
  productNumberNear,
  entryTwice,
  conversionDiffers,
];
