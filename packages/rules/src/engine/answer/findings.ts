import type { Finding, State, Topic } from '../define/shapes';
import type { Run } from '../formula/run';
import type { Holding } from './levels';
import type { FindingAnswer } from './shapes';

/** The sentence of the one result that a finding's decision came to; undefined while it is open. */
function decided(topic: Topic, run: Run, { decision }: Finding): string | undefined {
  if (decision === undefined) return undefined;
  const value = run.value(decision);
  const [only, more] = value.kind === 'among' ? value.options : [];
  if (only === undefined || more !== undefined) return undefined;
  return topic.decisions?.[decision]?.results[only]?.says;
}

/** Every finding with its level and what is said of it. */
export function findingAnswers(
  topic: Topic,
  run: Run,
  states: ReadonlyMap<string, State>,
  holding: Holding,
): readonly FindingAnswer[] {
  return Object.entries(topic.findings).map(([id, finding]) => {
    const level = states.get(`finding.${id}`) ?? 'unknown';
    const ruling =
      level === 'stop' || level === 'unknown'
        ? finding.stop
        : level === 'care'
          ? finding.care
          : undefined;
    const told = decided(topic, run, finding) ?? ruling?.says ?? finding.otherwise;
    const sure = holding.certain.has(`finding.${id}.${level}`);
    const unsure = ruling !== undefined && !sure;
    const says =
      level === 'not-asked' ? 'Not asked.' : unsure ? (finding.unsure ?? `Perhaps: ${told}`) : told;
    return { id, label: finding.label, level, says, source: finding.source };
  });
}
