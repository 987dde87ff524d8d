import type { Swept } from '@tarebook/sweep/many';
import { workerData } from 'piscina';
import { jobOf, type PartDone, type SweepPlan } from './sweep-job';

/** One thread of a sweep: made ready once, then given one part after another. */
let ready: Promise<PartDone> | undefined;

export default async function part({ at, vehicles }: { at: number; vehicles: readonly Swept[] }) {
  const plan: SweepPlan = workerData;
  ready ??= jobOf(plan);
  return (await ready)(at, vehicles);
}
