/**
 * Field tests: what the bucket, the stopwatch, the gauge, the air line and the ammeter say, and how far to trust them.
 *
 * @module
 */
export {
  type BucketFlow,
  type BucketInput,
  type BucketRuns,
  type BucketRunsInput,
  type BucketTimeInput,
  bucketFlow,
  bucketRuns,
  bucketTime,
} from "./bucket.ts";
