/** What the script and its workers agree on. */

export const QUEUE = "wells";

/**
 * A worker holds a batch for as long as it keeps saying so. One that has said nothing for `lockDuration` (milliseconds) has
 * lost it: the next look for such batches, every `stalledInterval`, puts it back in the queue. Short here, so that the
 * run shows it; half a minute is usual. A batch lost more than `maxStalledCount` times is set aside as failed.
 */
export const LEASE = { lockDuration: 3000, stalledInterval: 1000, maxStalledCount: 5 };
