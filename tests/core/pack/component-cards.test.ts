import { describe, expect, test } from 'vitest';
import { documentLines } from './document-lines.ts';

/** Figures and units are joined by no-break spaces. */
const plain = (lines: readonly string[]): string => lines.join('\n').replaceAll('\u00a0', ' ');

const cards = async (visit: string): Promise<string> => plain((await documentLines(visit)).of(/^component-cards$/));

describe('the component cards', () => {
  test('give the time of a product by its fitting, and its limits by meter and in its time', async () => {
    const text = await cards('nose-wheel-full');
    expect(text).toContain('Engine: Tarn Motors T4-90, serial number T4-2217');
    // 406.2 + 1204.5 - 318.4 = 1292.3 since new; 0 + 1204.5 - 318.4 = 886.1 since overhaul.
    expect(text).toMatch(/Hours, engine\s+318\.4 h\s+1204\.5 h\s+406\.2 h\s+1292\.3 h\s+886\.1 h/);
    // 406.2 + 2000 = 2406.2 since new, which the meter shows at 2406.2 - 406.2 + 318.4 = 2318.4.
    expect(text).toMatch(/L10\s+Engine overhaul\s+2406\.2 h since new\s+21 Mar 2029 or 2318\.4 h, engine/);
  });

  test('are one for each of two batteries, with its own counter', async () => {
    const text = await cards('electric-aeroplane');
    for (const [serial, counter] of [
      ['BP-2201', 'pack-a-cycles'],
      ['BP-2202', 'pack-b-cycles'],
    ]) {
      const card = text.slice(text.indexOf(`Werknummer ${serial}`)).split('Werknummer')[1] ?? '';
      expect(card).toContain(`Zyklen, Batterie (${counter})`);
      expect(card).toContain('700 Zyklen seit neu');
    }
  });
});

test('a log slip gives the time of the product since new, not the total of a meter that ran before its fitting', async () => {
  const slips = plain((await documentLines('nose-wheel-full')).of(/^log-book-inserts$/));
  expect(slips).toContain('1292.3 h since new');
});

test('the due list names launches and an item that waits for all of its clocks', async () => {
  const list = plain((await documentLines('glider')).of(/^due-list$/));
  expect(list).toContain('14.03.2028 oder 3066 Starts');
  expect(list).toContain('12.03.2025 oder 2310.4 h, Zelle, das Letzte davon');
});
