const PAUSE_MS = 250;

/** Does it once nobody has typed for a moment. */
export function debounce(act: () => Promise<void>): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  return () => {
    clearTimeout(timer);
    timer = setTimeout(() => void act(), PAUSE_MS);
  };
}
