import * as z from 'zod';
import { fieldText } from '../text/field-texts.ts';
import { digest, line, list, part } from './field.ts';

// `kept` is plain data: its sections were valid in the pack that they come from, and are valid again in the record that
// states them. No rule reads them, so that what nobody touched is not checked, printed or signed again.

/** Reference to the standing file of the aircraft: the record states only what this visit adds or changes. */
export const Standing = part('standing', {
  pack: line('standing_pack', 'Q-SLM-P1-1', 60),
  sha256: digest('standing_sha256'),
  without: list('standing_without', line('standing_without_each', '/aircraft/stations/rear-locker', 300), {
    max: 100,
  }).optional(),
  kept: z
    .record(z.string(), z.unknown())
    .optional()
    .meta({ ...fieldText('standing_kept'), examples: [{}] }),
});
export type Standing = z.infer<typeof Standing>;
