/**
 * Returns the launches until a part that counts actuations is due: (allowed − done) / actuations of a launch.
 *
 * @returns whole launches, rounded down; negative past the limit
 * @source technical information of a manufacturer of tow releases, read
 * @example launchesLeft({ allowedActuations: 10_000, actuationsPerLaunch: 5 })  // 2000
 */
export function launchesLeft(given: {
  allowedActuations: number;
  doneActuations?: number;
  actuationsPerLaunch: number;
}): number {
  return Math.floor((given.allowedActuations - (given.doneActuations ?? 0)) / given.actuationsPerLaunch);
}
