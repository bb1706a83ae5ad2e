import { tanksOf } from '../../../worker/calc/fuel.ts';
import { loadStationsOf } from '../../../worker/calc/loading/load-space.ts';
import type { LoadingFacts } from '../../../worker/pack/loading-facts.ts';
import type { Printer } from '../../../worker/units/print.ts';
import { factorOf } from '../../../worker/units/quantity.ts';
import { element } from '../element.ts';
import { typedNumber } from '../typed-number.ts';

export const BURN = 'burn';

/** One line of the form: what is asked for, in which unit, and at most how much. */
export interface Asked {
  id: string;
  name: string;
  unit: string;
  most: number;
  /** kg in one unit of the field. */
  kgPerUnit: number;
}

/** What is typed in: kg by field, and the fields whose text is no amount. A field left empty is nothing aboard. */
export interface Typed {
  isEmpty: boolean;
  kg: Readonly<Record<string, number>>;
  unread: readonly Asked[];
}

/** What a loading is made of: seats and baggage, tanks, and what the flight burns. */
export function fieldsFor({ aircraft, units }: LoadingFacts, say: Printer): Asked[] {
  const [kg, l] = [factorOf('mass', units), factorOf('volume', units)];
  const seats = loadStationsOf(aircraft).map(({ id, name, maximumMassKg }) => {
    const most = maximumMassKg / kg;
    return { id, name, unit: say.unit('mass'), most, kgPerUnit: kg };
  });
  const tanks = tanksOf(aircraft).map(({ id, name, capacityL, unusableL, densityKgPerL }) => {
    const most = Math.max(0, capacityL - unusableL) / l;
    return { id, name: say.words`${name}, usable fuel`, unit: say.unit('volume'), most, kgPerUnit: l * densityKgPerL };
  });
  const [first] = tanks;
  const burnt = {
    id: BURN,
    name: say.words`Fuel burnt on the flight`,
    unit: first?.unit ?? '',
    kgPerUnit: first?.kgPerUnit ?? 0,
  };
  const mostBurnt = tanks.reduce((sum, { most }) => sum + most, 0);
  return [...seats, ...tanks, ...(first ? [{ ...burnt, most: mostBurnt }] : [])];
}

/** A text field: fields for numbers drop a comma that their browser does not expect, and 8,5 becomes 85. */
export function fieldElement({ id, name, unit, most }: Asked, say: Printer): HTMLElement {
  const hint = element('small', {}, say.words`at most ${say.asIs(Math.floor(most * 10) / 10)}`);
  const input = element('input', { name: id, inputMode: 'decimal', autocomplete: 'off', placeholder: '0' });
  return element('label', {}, `${name}, ${unit} `, hint, input);
}

/** Reads the form, and marks what could not be read. */
export function readFields(form: HTMLFormElement, asked: readonly Asked[]): Typed {
  const kg: Record<string, number> = {};
  const unread: Asked[] = [];
  let isEmpty = true;
  for (const field of asked) {
    const input = form.elements.namedItem(field.id) as HTMLInputElement;
    const text = input.value.trim();
    const amount = text === '' ? 0 : typedNumber(text);
    const isRead = amount !== undefined && amount >= 0;
    if (text !== '') isEmpty = false;
    input.setAttribute('aria-invalid', String(!isRead));
    if (isRead) kg[field.id] = amount * field.kgPerUnit;
    else unread.push(field);
  }
  return { isEmpty, kg, unread };
}
