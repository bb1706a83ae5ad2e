/** Says how things stand, in words; whether well is said by the look as well. */
export function showVerdict(place: HTMLElement, words: string, isGood: boolean): void {
  place.textContent = words;
  place.className = isGood ? 'verdict good' : 'verdict bad';
}
