const PAUSE_MS = 250;

/** Returns a function that runs `act` after a short pause in typing. */
export function debounce(act: () => Promise<void>): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  return () => {
    clearTimeout(timer);
    timer = setTimeout(() => void act(), PAUSE_MS);
  };
}
