import { addressForms, parseAddress } from '../../worker/core/calc/surveillance/address.ts';
import { altitudeCode, codedAltitudeFt } from '../../worker/core/calc/surveillance/altitude-code.ts';
import { stateOf } from '../../worker/core/calc/surveillance/state-of.ts';
import { usAddress, usRegistration } from '../../worker/core/calc/surveillance/us-registration.ts';
import { printNumber } from '../../worker/core/text/numbers.ts';
import { inputOf } from './case-of.ts';
import type { Formula, Topic } from './formula.ts';
import { numbered, said, sum, summed } from './steps.ts';

const forms: Formula = {
  id: 'address-forms',
  title: 'Aircraft address from its digits',
  tex: ['a = \\sum_i d_i \\cdot b^{n - i}'],
  symbols: [
    ['a', 'address as a number', ''],
    ['d_i', 'each digit, from the left; A to F are 10 to 15', ''],
    ['i', 'place of the digit', ''],
    ['b', 'base: 16, 8 or 2', ''],
    ['n', 'number of digits: 6, 8 or 24, by which the base is told', ''],
  ],
  by: [parseAddress, addressForms],
  holds: 'Any other number of digits, and any digit that the base lacks, is a finding.',
  example() {
    const { octal } = inputOf<{ octal: string }>('IC-04');
    const address = parseAddress(octal) ?? Number.NaN;
    return {
      case: 'IC-04',
      given: { ...numbered('d', [...octal].map(Number), ''), b: [8, ''] },
      steps: [
        sum(`a = ${summed(octal.length, (i) => `d_${i} \\cdot b^${octal.length - i}`)}`, address, '', 'address'),
        said(`In hexadecimal digits: ${addressForms(address).hexadecimal}.`),
      ],
    };
  },
};

const block: Formula = {
  id: 'state-block',
  title: 'State of an address',
  tex: ['a_1 \\leq a \\leq a_2'],
  symbols: [
    ['a', 'address', ''],
    ['a_1', 'first address of the block of a State', ''],
    ['a_2', 'last address of the block', ''],
  ],
  by: [stateOf],
  holds:
    'Of a block whose size differs in two data files, the part in both counts. An address that only one of them gives to a State is not called wrong. The nationality mark of the registration must belong to the same State.',
  example() {
    const input = inputOf<Record<'below' | 'belowState' | 'above' | 'aboveState', string>>('IC-01a');
    const [below, above] = [input.below, input.above].map((text) => stateOf(parseAddress(text) ?? Number.NaN));
    return {
      case: 'IC-01a',
      given: {},
      steps: [
        said(`${input.below} belongs to ${below}, ${input.above} to ${above}.`, {
          below: Number(below === input.belowState),
          above: Number(above === input.aboveState),
        }),
      ],
    };
  },
};

const FIRST = 'z_1 = \\left\\lfloor \\frac{n}{101711} \\right\\rfloor + 1';
const REST = 'r = n - (z_1 - 1) \\cdot 101711 - 601';
const SECOND = 'z_2 = \\left\\lfloor \\frac{r}{10111} \\right\\rfloor';

const registration: Formula = {
  id: 'us-registration',
  title: 'United States registration of an address',
  tex: ['n = a - 10485761', FIRST, REST, SECOND],
  symbols: [
    ['a', 'address', ''],
    ['n', 'place of the address, from A00001 on', ''],
    ['z_1', 'first digit', ''],
    ['r', 'what is left, the 601 registrations without a second digit taken off', ''],
    ['z_2', 'second digit', ''],
  ],
  by: [usRegistration, usAddress],
  holds:
    'Third and fourth digit follow with 951 and 35 in the same way. What is left below 601, or below 25 after the fourth digit, is one of the letters without I and O.',
  example() {
    const input = inputOf<{ address: string; registration: string }>('IC-03n');
    const a = parseAddress(input.address) ?? Number.NaN;
    const found = usRegistration(a) ?? '';
    const place = a - 0xa00001;
    const digit = (at: number): number => Number(found[at]);
    return {
      case: 'IC-03n',
      given: { a: [a, ''] },
      steps: [
        sum('n = a - 10485761', place),
        sum(FIRST, digit(1)),
        sum(REST, place - (digit(1) - 1) * 101_711 - 601),
        sum(SECOND, digit(2)),
        said(`The rest gives the letters: ${input.address} is ${found}.`, {
          isRegistration: Number(found === input.registration),
        }),
        said(`Counted back, ${found} has address ${addressForms(usAddress(found) ?? Number.NaN).hexadecimal}.`),
      ],
    };
  },
};

const STEPS = 'n = \\frac{h + 1200}{100}';
const FIVES = 'f = \\left\\lfloor \\frac{n}{5} \\right\\rfloor';
const GRAY = 'g = f \\oplus \\left\\lfloor \\frac{f}{2} \\right\\rfloor';

const gillham: Formula = {
  id: 'altitude-code',
  title: 'Altitude code of an encoder',
  tex: [STEPS, FIVES, GRAY, 'w = n - 5 \\cdot f'],
  symbols: [
    ['h', 'pressure altitude, to the nearest 100 ft', 'ft'],
    ['n', 'steps of 100 ft above −1,200 ft', ''],
    ['f', 'whole steps of 500 ft', ''],
    ['g', 'their Gray code: the pulses D1 D2 D4 A1 A2 A4 B1 B2 B4, D1 the highest', ''],
    ['w', 'steps of 100 ft within these', ''],
  ],
  by: [altitudeCode, codedAltitudeFt],
  holds:
    'From −1,200 to 126,700 ft. The pulses C1 C2 C4 are 001, 011, 010, 110, 100 for w from 0 to 4, and backwards where f is odd. The plus in a circle adds bits without carrying.',
  example() {
    const { altitudeFt } = inputOf<{ altitudeFt: number }>('IC-07s');
    const code = altitudeCode(altitudeFt) ?? Number.NaN;
    const steps = (altitudeFt + 1200) / 100;
    const fives = Math.floor(steps / 5);
    return {
      case: 'IC-07s',
      given: { h: [altitudeFt, 'ft'] },
      steps: [
        sum(STEPS, steps),
        sum(FIVES, fives),
        sum(GRAY, code >> 3),
        sum('w = n - 5 \\cdot f', steps - 5 * fives),
        said(
          `Twelve pulses: ${code.toString(2).padStart(12, '0')}. Read back: ${printNumber(codedAltitudeFt(code) ?? Number.NaN, 0)} ft.`,
          {
            pulses: Number(code.toString(2)),
            decodedFt: codedAltitudeFt(code) ?? Number.NaN,
          },
        ),
      ],
    };
  },
};

export const addresses: Topic = {
  id: 'addresses',
  title: 'Addresses and altitude code',
  formulas: [forms, block, registration, gillham],
};
