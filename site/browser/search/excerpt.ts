const AROUND = 90;

/** Returns an excerpt around the first match of some words, with the matching words marked. */
export function excerpt(text: string, words: readonly string[]): { text: string; isWord: boolean }[] {
  const lower = text.toLowerCase();
  const places = words.map((word) => lower.indexOf(word)).filter((place) => place >= 0);
  const first = places.length === 0 ? 0 : Math.min(...places);
  const from = first <= AROUND ? 0 : lower.indexOf(' ', first - AROUND) + 1;
  const to = from + 2 * AROUND >= text.length ? text.length : text.lastIndexOf(' ', from + 2 * AROUND);
  const shown = `${from === 0 ? '' : '… '}${text.slice(from, to)}${to === text.length ? '' : ' …'}`;
  if (words.length === 0) return [{ text: shown, isWord: false }];
  const pieces = shown.split(new RegExp(`(${words.map(escaped).join('|')})`, 'i'));
  return pieces.map((piece, index) => ({ text: piece, isWord: index % 2 === 1 }));
}

const escaped = (word: string): string => word.replaceAll(/[\\^$.*+?()[\]{}|]/g, '\\$&');
