import { textOf } from '../answer/shown';
import type { Sayable } from '../words/value';
import { isTold, type Matter } from './matter';

/** What came up in a case: findings and limits that are not in order, and the limit that binds. */
function cameUp({ answer }: Matter): ReadonlySet<string> {
  const findings = answer.findings.flatMap(({ id, level }) =>
    level === 'ok' || level === 'not-asked' ? [] : [`finding.${id}`],
  );
  const limits = answer.limits.flatMap(({ id, state }) =>
    state === 'stop' || state === 'unknown' || state === 'care' || id === answer.binding
      ? [`limit.${id}`]
      : [],
  );
  return new Set([...findings, ...limits]);
}

/** Whether what was told rules it out: `battery.chemistry!=lifepo4`. */
const isRuledOut = ({ asked }: Matter, name: string): boolean => {
  const [fact = '', option] = name.split('!=');
  return option !== undefined && asked.facts[fact] === option;
};

/** The cautions of a topic, the one that fits what came up first. */
export function cautionsFitting(matter: Matter): readonly Sayable[] {
  const { topic, compiled, run } = matter;
  const up = cameUp(matter);
  const fit = (fits: readonly string[] = []): number => {
    const found = fits.filter((name) => up.has(name)).length;
    if (fits.some((name) => isRuledOut(matter, name))) return -1;
    return found * 2 + Math.min(1, fits.filter((name) => isTold(matter, name)).length);
  };
  return topic.cautions
    .map(({ says, fits }, place) => ({ says, fits: fit(fits), place }))
    .toSorted((a, b) => b.fits - a.fits || a.place - b.place)
    .map(({ says }) => textOf(compiled, run, says));
}
