import { list, reference } from './field.ts';

/** Parts and materials used for an entry, without those of its changes. */
export const usedParts = () => list('usedParts', reference('part', 'usedParts_each', 'P8'), { max: 60 }).optional();
