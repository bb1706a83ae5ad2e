import { entries, figure, part, words } from './look.ts';
import type { Json, JsonPart } from './place.ts';
import { brokenIn, type Statement } from './statement.ts';

const devicesOf = (record: Json): JsonPart[] => entries(record, 'surveillance', 'devices');

/** The number of an address of 24 bits, written in six hexadecimal or eight octal digits. */
const addressOf = (text: string | undefined): number | undefined =>
  text === undefined ? undefined : Number.parseInt(text, /^[0-7]{8}$/.test(text) ? 8 : 16);

const plain = (text: string | undefined): string | undefined => text?.replace(/[^A-Za-z0-9]/g, '').toUpperCase();

const agree = <Value>(a: Value | undefined, b: Value | undefined): boolean =>
  a === undefined || b === undefined || a === b;

/** What one device, one run or one load says in two ways. */
export const TOLD_TWICE: readonly Statement[] = [
  {
    says: 'an address or a flight identity that is not the one set, read back or assigned',
    broken: (record) =>
      brokenIn(devicesOf(record), (device) => {
        const readBack = part(device, 'readBack');
        const [set, read] = [words(device, 'addressSet'), words(readBack, 'address')].map(addressOf);
        const own = addressOf(words(part(record, 'aircraft'), 'address24'));
        return agree(set, read) && agree(read, own) && agree(set, own);
      }) +
      brokenIn(devicesOf(record), (device) => {
        const identities = [words(device, 'flightIdentitySet'), words(part(device, 'readBack'), 'flightIdentity')];
        const [set, read] = identities.map(plain);
        return agree(set, read) && agree(read, plain(words(part(record, 'aircraft'), 'registration')));
      }),
  },
  {
    says: 'a value of the run after the work that was not read before it, or in another unit',
    broken: (record) => {
      const [before, after] = ['before', 'after'].map((when) =>
        entries(record, 'engineRuns')
          .filter((run) => run.when === when)
          .flatMap((run) => entries(run, 'values')),
      );
      if (!before?.length || !after?.length) return 0;
      return brokenIn(after, (value) => before.some(({ name, unit }) => name === value.name && unit === value.unit));
    },
  },
  {
    says: 'a load that turns the compass by more than ten degrees',
    broken: (record) =>
      brokenIn(entries(record, 'compass', 'loads'), (load) => {
        const turned = Math.abs((figure(load, 'onDeg') ?? 0) - (figure(load, 'offDeg') ?? 0));
        return Math.min(turned, 360 - turned) <= 10;
      }),
  },
];
