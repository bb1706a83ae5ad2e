import type { Visit } from '../../record/visit.ts';
import { checkOf } from './check.ts';
import type { Check, TransponderOmission } from './surveillance-result.ts';

export type TransponderTest = NonNullable<NonNullable<Visit['surveillance']>['transponderTest']>;

/** Appendix F (f) requires min. two addresses that are not its own. */
const MIN_OTHERS = 2;

/** Whether a test is of a Mode S transponder. */
export function isModeS({ class: transponderClass }: Pick<TransponderTest, 'class'>): boolean {
  return transponderClass.startsWith('S');
}

/**
 * Returns the checks of a Mode S transponder in addition to its figures; empty for Mode A and C.
 *
 * @source 14 CFR 43 Appendix F (f) to (j), as amended in 2023
 */
export function modeSChecks(test: TransponderTest): Check[] {
  if (!isModeS(test)) return [];
  const {
    altitudeAgrees,
    identityAgrees,
    communicationFormats,
    allCallCorrect,
    repliedToModeAAllCall,
    squitterCorrect,
  } = test.modeS ?? {};
  return [
    checkOf('(f)', 'own-address-only', answersRightly(test)),
    checkOf('(g)', 'altitude-agrees', altitudeAgrees),
    checkOf('(g)', 'identity-agrees', identityAgrees),
    checkOf('(g)', 'communication-formats', communicationFormats && communicationFormats !== 'wrong'),
    checkOf('(h)', 'all-call', allCallCorrect),
    checkOf(
      '(i)',
      'silent-to-mode-a-all-call',
      repliedToModeAAllCall === undefined ? undefined : !repliedToModeAAllCall,
    ),
    checkOf('(j)', 'squitter', squitterCorrect),
  ];
}

function answersRightly({
  repliesToOwnAddress,
  repliedToOther,
  otherAddressesTried = 0,
}: TransponderTest): boolean | undefined {
  if (repliesToOwnAddress === false || repliedToOther === true) return false;
  const isShown = repliesToOwnAddress && repliedToOther === false && otherAddressesTried >= MIN_OTHERS;
  return isShown ? true : undefined;
}

/** Returns the figures that Appendix F requires for the class of the transponder, and that are not in the record. */
export function missingOfTransponder(test: TransponderTest): TransponderOmission[] {
  const { sensitivityModeADbm, sensitivityModeCDbm, modeS } = test;
  const hasBoth = sensitivityModeADbm !== undefined && sensitivityModeCDbm !== undefined;
  const { hasDiversity, isolationDb } = modeS ?? {};
  const missing: [TransponderOmission, boolean][] = [
    ['sensitivity-by-mode', !hasBoth],
    ['diversity', isModeS(test) && hasDiversity === undefined],
    ['antenna-isolation', isModeS(test) && hasDiversity === true && isolationDb === undefined],
  ];
  return missing.flatMap(([figure, isMissing]) => (isMissing ? [figure] : []));
}
