import { nearest } from '../../core/record/nearest.ts';

/**
 * Hint behind an unknown name: the known one that is spelled most like it.
 *
 * @example didYouMean('asess', ['assess', 'pack'])  // '. Did you mean assess?'
 */
export function didYouMean(name: string, known: readonly string[], prefix = ''): string {
  const near = nearest(name, known);
  return near === undefined ? '' : `. Did you mean ${prefix}${near}?`;
}
