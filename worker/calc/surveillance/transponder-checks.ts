import type { Visit } from '../../visit/visit.ts';
import { type Check, checkOf } from './check.ts';

export type TransponderTest = NonNullable<NonNullable<Visit['surveillance']>['transponderTest']>;

/** Appendix F (f) asks for at least two addresses that are not its own. */
const LEAST_OTHERS = 2;

/** Whether a test is of a Mode S transponder. */
export function isModeS({ class: transponderClass }: Pick<TransponderTest, 'class'>): boolean {
  return transponderClass.startsWith('S');
}

/**
 * What a Mode S transponder has to show besides its figures; none for Mode A and C.
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
    checkOf('(f)', 'Replies to its own address and not to two others', answersRightly(test)),
    checkOf('(g)', 'Altitude in replies to UF 4 is that of Mode C', altitudeAgrees),
    checkOf('(g)', 'Identity in replies to UF 5 is that of Mode 3/A', identityAgrees),
    checkOf(
      '(g)',
      'Replies to UF 20, 21 and 24 are right, or it has none',
      communicationFormats && communicationFormats !== 'wrong',
    ),
    checkOf('(h)', 'Replies to UF 11 have the right address and capability', allCallCorrect),
    checkOf(
      '(i)',
      'Silent to the Mode A/C-only all-call',
      repliedToModeAAllCall === undefined ? undefined : !repliedToModeAAllCall,
    ),
    checkOf('(j)', 'Sends a correct squitter about once a second', squitterCorrect),
  ];
}

function answersRightly({
  repliesToOwnAddress,
  repliedToOther,
  otherAddressesTried = 0,
}: TransponderTest): boolean | undefined {
  if (repliesToOwnAddress === false || repliedToOther === true) return false;
  const isShown = repliesToOwnAddress && repliedToOther === false && otherAddressesTried >= LEAST_OTHERS;
  return isShown ? true : undefined;
}

/** Figures that Appendix F asks for in the class of the transponder, and that the record does not have, in words. */
export function transponderOmissions(test: TransponderTest): string[] {
  const { sensitivityModeADbm, sensitivityModeCDbm, modeS } = test;
  const hasBoth = sensitivityModeADbm !== undefined && sensitivityModeCDbm !== undefined;
  const { hasDiversity, isolationDb } = modeS ?? {};
  return [
    ...(hasBoth ? [] : ['sensitivity in Mode 3/A and in Mode C']),
    ...(isModeS(test) && hasDiversity === undefined ? ['whether it has diversity'] : []),
    ...(isModeS(test) && hasDiversity && isolationDb === undefined ? ['isolation between its antennas'] : []),
  ];
}
