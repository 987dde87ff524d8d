import type { State, Topic } from '../define/shapes';
import type { Holding } from './levels';
import type { FindingAnswer } from './shapes';

/** Every finding with its level and what is said of it. */
export function findingAnswers(
  topic: Topic,
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
    const told = ruling?.says ?? finding.otherwise;
    const sure = holding.certain.has(`finding.${id}.${level}`);
    const unsure = ruling !== undefined && !sure;
    const says =
      level === 'not-asked'
        ? 'Not asked.'
        : unsure
          ? (finding.unsure ?? `It may be so: ${told}`)
          : told;
    return { id, label: finding.label, level, says, source: finding.source };
  });
}
