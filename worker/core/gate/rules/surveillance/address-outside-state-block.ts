import { addressForms } from '../../../calc/surveillance/address.ts';
import { perhapsStateOf, stateOfMarks } from '../../../calc/surveillance/state-of.ts';
import { usAddress } from '../../../calc/surveillance/us-registration.ts';
import * as m from '../../../text/generated/messages.ts';
import { type Said, said } from '../../../text/message.ts';
import { type Rule, read } from '../../rule.ts';

export const addressOutsideStateBlock: Rule = {
  code: 'ADDRESS_OUTSIDE_STATE_BLOCK',
  severity: 'caution',
  meaning: 'The address is in no State’s block, in that of another State, or belongs to another registration',
  remedy: m.addressOutsideStateBlock_remedy,
  source: read(
    'two open data files that agree on blocks and marks, named at STATE_BLOCKS, and the count of US registrations at usRegistration()',
  ),
  check: ({ visit, results }) => {
    const { address, forms } = results.surveillance ?? {};
    if (address === undefined || !forms) return undefined;
    const { hexadecimal } = forms;
    const { registration } = visit.aircraft;
    const contradiction =
      ofAnotherRegistration({ address, hexadecimal, registration, follows: forms.registration }) ??
      ofAnotherState({ hexadecimal, registration, state: forms.state ?? perhapsStateOf(address) });
    return (
      contradiction && { path: ['aircraft', 'address24'], sentence: contradiction, data: { address: hexadecimal } }
    );
  },
};

/** United States registrations and addresses follow from each other. */
function ofAnotherRegistration(of: {
  address: number;
  hexadecimal: string;
  registration: string;
  follows: string | undefined;
}): Said | undefined {
  const { address, hexadecimal, registration, follows } = of;
  const marks = registration.replace('-', '');
  if (follows !== undefined && follows !== marks)
    return said(m.addressOutsideStateBlock_addressBelongsNot, {
      hexadecimal,
      registration: follows,
      registration2: registration,
    });
  const due = usAddress(marks);
  return due === undefined || due === address
    ? undefined
    : said(m.addressOutsideStateBlock_addressOfMarksIs, {
        hexadecimal,
        registration,
        due: addressForms(due).hexadecimal,
      });
}

function ofAnotherState(of: {
  hexadecimal: string;
  registration: string;
  state: string | undefined;
}): Said | undefined {
  const { hexadecimal, registration, state } = of;
  if (state === undefined)
    return isDemo(registration) ? undefined : said(m.addressOutsideStateBlock_addressNoBlockKnown, { hexadecimal });
  const ofMarks = stateOfMarks(registration);
  return ofMarks === undefined || ofMarks === state
    ? undefined
    : said(m.addressOutsideStateBlock_addressOfState, { hexadecimal, registration });
}

/** Q begins no nationality mark (ITU Radio Regulations, App. 42, from memory): demo aircraft have no block. */
function isDemo(registration: string): boolean {
  return registration.startsWith('Q');
}
