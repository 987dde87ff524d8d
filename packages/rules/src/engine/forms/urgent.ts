import { cautionsFitting } from './caution';
import { limitAt } from './deciding';
import { following, ifShort, may, must, type Part, warning } from './length';
import type { Matter } from './matter';
import { all, besideDo } from './parts';
import { findingsTold, isCertain, partsOf, urgentSaid } from './verdict';

/**
 * Where people have to do something before anything else: that, then what else stops it, and of what
 * was asked what is certain. Whoever has to get out first hears nothing of what is merely open.
 */
export function urgently(matter: Matter, asking: string | undefined): readonly Part[] {
  const results = asking === undefined ? [] : (matter.topic.askings?.[asking]?.results ?? []);
  const findings = findingsTold(matter);
  const [first, ...more] = findings.filter(({ level }) => level === 'stop');
  const asked = findings.find(
    (each) => each.level === 'if' && isCertain(each) && results.includes(`finding.${each.id}`),
  );
  const over = limitAt(matter, 'stop');
  const [wrong, todo] = first ? partsOf(first) : [];
  const [caution, ...cautions] = cautionsFitting(matter);
  return [
    ...all(urgentSaid(matter), must),
    ...(asked ? besideDo(asked.messages.wrong, asked.messages.do, 0.84) : []),
    ...(wrong ? [may(wrong, 0.8)] : []),
    // What to do comes before what else there is to know.
    ...(todo ? [following(may(todo, 0.9), wrong)] : []),
    ...more.slice(0, 2).flatMap((each) => all(partsOf(each).slice(0, 1), (of) => may(of, 4))),
    ...(over ? besideDo(over.wrong[0], over.todo, 0.95) : []),
    ...(caution ? [warning(may(caution, 0.85))] : []),
    ...(first?.messages.because ? [ifShort(first.messages.because)] : []),
    ...cautions.slice(0, 5).map((each) => warning(ifShort(each))),
  ];
}
