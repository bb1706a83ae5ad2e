/**
 * Returns a queue that runs tasks one after another. The gates of a Durable Object let other requests in while it waits
 * for anything but its storage, such as a digest; tasks that read, wait and then write must therefore run in a queue.
 */
export function serialQueue(): <T>(task: () => Promise<T>) => Promise<T> {
  let last: Promise<unknown> = Promise.resolve();
  return (task) => {
    const mine = last.then(task);
    last = mine.catch(() => undefined);
    return mine;
  };
}
