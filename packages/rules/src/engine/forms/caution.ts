import { textOf } from '../answer/shown';
import type { Sayable } from '../words/value';
import { isTold, type Matter } from './matter';

/** What is merely open came up less than what was found. */
const weightOf = { stop: 2, care: 2, if: 2, unknown: 1, ok: 0, 'not-asked': 0 } as const;

/** What came up in a case, and how much: findings and limits that are not in order, and the limit that binds. */
function cameUp({ answer }: Matter): ReadonlyMap<string, number> {
  const findings = answer.findings.map(
    ({ id, level }) => [`finding.${id}`, weightOf[level]] as const,
  );
  const limits = answer.limits.map(
    ({ id, state }) => [`limit.${id}`, id === answer.binding ? 2 : weightOf[state]] as const,
  );
  return new Map([...findings, ...limits]);
}

/** Whether something that a caution is about was found, and is not merely open. */
export function isFired(matter: Matter): boolean {
  const up = cameUp(matter);
  const [first] = inOrder(matter);
  return (first?.names ?? []).some((name) => (up.get(name) ?? 0) > weightOf.unknown);
}

/** Whether what was told rules it out: `battery.chemistry!=lifepo4`. */
const isRuledOut = ({ asked }: Matter, name: string): boolean => {
  const [fact = '', option] = name.split('!=');
  return option !== undefined && asked.facts[fact] === option;
};

function inOrder(
  matter: Matter,
): readonly { readonly says: string; readonly names: readonly string[] }[] {
  const { topic } = matter;
  const up = cameUp(matter);
  const fit = (fits: readonly string[] | undefined): number => {
    // What holds for every case comes before what is about something that did not come up.
    if (fits === undefined) return 0.5;
    const found = fits.reduce((sum, name) => sum + (up.get(name) ?? 0), 0);
    if (fits.some((name) => isRuledOut(matter, name))) return -1;
    return found + Math.min(1, fits.filter((name) => isTold(matter, name)).length);
  };
  return topic.cautions
    .map(({ says, fits }, place) => ({ says, names: fits ?? [], fits: fit(fits), place }))
    .toSorted((a, b) => b.fits - a.fits || a.place - b.place);
}

/** The cautions of a topic, the one that fits what came up first. */
export function cautionsFitting(matter: Matter): readonly Sayable[] {
  const { compiled, run } = matter;
  return inOrder(matter).map(({ says }) => textOf(compiled, run, says));
}
