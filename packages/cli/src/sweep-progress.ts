import { sayBeside } from './said';

const perSecond = 5000;

/** How long it may still take, in the unit that one says it in. */
function timeSaid(seconds: number): string {
  if (seconds < 120) return `${Math.ceil(seconds)} s`;
  const minutes = Math.ceil(seconds / 60);
  return minutes < 120 ? `${minutes} min` : `${Math.round(minutes / 60)} h`;
}

/** How far it is and how long it may still take, now and then; what was there before is no measure. */
export function progress() {
  const begun = performance.now();
  let told = begun;
  let first: number | undefined;
  return async (share: number, pairs: number): Promise<void> => {
    first ??= share;
    const now = performance.now();
    const done = share - first;
    if (now - told < perSecond || done <= 0 || share >= 1) return;
    told = now;
    const left = ((now - begun) * (1 - share)) / done / 1000;
    const shown = `${Math.floor(share * 100)} %`;
    await sayBeside(
      `${shown} done, ${pairs.toLocaleString('en-US')} pairs, about ${timeSaid(left)} left`,
    );
  };
}
