/** Shows a verdict in words; a style also marks whether it is good. */
export function showVerdict(place: HTMLElement, words: string, isGood: boolean): void {
  place.textContent = words;
  place.className = isGood ? 'verdict good' : 'verdict bad';
}
