import * as m from '../text/generated/messages.ts';
import { said, type Value } from '../text/message.ts';

/** What tells one tested instrument or system from another. */
export interface Tested {
  name?: string | undefined;
  item?: string | undefined;
}

/** Name of what was tested: the one that the record gives it, else its line of the equipment list; undefined without either. */
export const testedName = ({ name, item }: Tested): string | undefined => name ?? item;

/** A figure, after the name of what was tested if it has one. */
export function ofTested(tested: Tested | undefined, figure: Value): Value {
  const name = tested && testedName(tested);
  return name === undefined ? figure : said(m.testedFigure, { name, figure });
}
