import { againstSaid } from '../answer/room';
import { openingOf } from '../answer/sentence';
import { textOf } from '../answer/shown';
import type { NoHelp, Remedy } from '../remedy/shapes';
import { message } from '../words/message';
import { sayer } from '../words/say';
import { own, type Sayable, text } from '../words/value';
import { askedFirst, askingLabel } from './asking';
import { cautionsFitting } from './caution';
import { fittedWith, may, must, type Part, warning } from './length';
import { limitsInOrder } from './limit';
import { listSaid } from './lists';
import type { Matter } from './matter';
import { findingsTold, levelOf, urgentSaid } from './verdict';
import { whereToLook } from './where';
import type { Written } from './written';

export type Changes = {
  readonly remedies: readonly Pick<Remedy, 'message'>[];
  readonly noHelp?: readonly Pick<NoHelp, 'message'>[];
};

const block = (title: string, of: readonly Sayable[]): Sayable =>
  message('part', { title: message('heading', { of: title }), of });

function limitLines(matter: Matter, most: number): readonly Sayable[] {
  return limitsInOrder(matter)
    .slice(0, most)
    .map((limit): Sayable => {
      const { used, of } = againstSaid(limit);
      const label = text(matter.topic.limits[limit.id]?.label ?? limit.id);
      return of === null
        ? message('labeled', { label, of: used })
        : message('stands-at', { label, used, of, state: limit.state });
    });
}

const findingLines = (matter: Matter): readonly Sayable[] =>
  findingsTold(matter).map(({ id, messages: { wrong, because, do: todo } }) =>
    message('labeled', {
      label: text(matter.topic.findings[id]?.label ?? id),
      of: message('sentences', { of: [wrong, because, todo].flatMap((each) => each ?? []) }),
    }),
  );

const missingLines = ({ topic, answer }: Matter, most: number): readonly Sayable[] =>
  answer.missing.slice(0, most).flatMap(({ fact }) => {
    const declared = topic.facts[fact];
    if (!declared) return [];
    return [message('asks-where', { ask: text(declared.ask), where: whereToLook(declared) })];
  });

const assumedLines = ({ answer }: Matter): readonly Sayable[] =>
  answer.assumed.map((each) => each.message);

/** How it is done, where the topic tells it and it may be what was asked. */
const howLines = ({ topic, compiled, run }: Matter): readonly Part[] =>
  Object.values(topic.how ?? {}).flatMap(({ label, steps, caution, when }) => {
    const shown = when === undefined ? undefined : run.value(when);
    if (shown?.kind === 'truth' && !shown.yes) return [];
    const of = [...steps, caution].map((each) => textOf(compiled, run, each));
    return [may(message('part', { title: text(label), of }), 7)];
  });

/** Every list of the topic whole, as a list. */
const lists = ({ answer }: Matter): readonly Sayable[] =>
  answer.selections.flatMap((list) => listSaid(list, true) ?? []);

/** What people have to do at once, and what was asked; the verdict alone is said by the sentence. */
function saidFirst(matter: Matter, asking: string | undefined): readonly Sayable[] {
  const verdict = JSON.stringify(openingOf(matter.topic, levelOf(matter), matter.answer.findings));
  const asked = askedFirst(matter, asking, true);
  return [...urgentSaid(matter), ...asked.filter((each) => JSON.stringify(each) !== verdict)];
}

const letterWords = { most: 350 } as const;
/** More remedies than these nobody reads. */
const mostChanges = 3;

/** Mail: the answer with its working, lists as lists, and every caution there is room for. */
export function letter(
  matter: Matter,
  asking: string | undefined,
  changes?: Changes,
  title = '',
): Written {
  const say = sayer(matter.voice);
  const { answer } = matter;
  const first = saidFirst(matter, asking);
  const [caution, ...others] = cautionsFitting(matter);
  const remedies = changes?.remedies.slice(0, mostChanges).map((each) => each.message) ?? [];
  const { lines, cautions } = fittedWith(
    say,
    [
      ...(title === '' ? [] : [must(own(title))]),
      ...first.map(must),
      must(answer.messages.sentence),
      ...lists(matter).map((each) => may(each, 1)),
      ...(caution ? [warning(must(block('careful', [caution])), [caution])] : []),
      may(block('missing', missingLines(matter, 5)), 1),
      may(block('limits', limitLines(matter, 6)), 2),
      may(block('findings', findingLines(matter)), 2),
      may(block('changes', remedies), 3),
      may(block('assumed', assumedLines(matter)), 4),
      ...howLines(matter),
      warning(may(block('careful', others.slice(0, 3)), 5), others.slice(0, 3)),
      must(message('under-rules', ruled(matter))),
    ],
    letterWords,
  );
  return { text: lines.join('\n\n'), cautions };
}

const ruled = ({ answer: { topic, rules, asOf } }: Matter) => ({ topic, rules, asOf });

/** As many words as stand on one page in a size that is read without glasses. */
const pageWords = { most: 480 } as const;

/** Print: one page, with everything that was compared. */
export function page(
  matter: Matter,
  asking: string | undefined,
  changes?: Changes,
  title = '',
): Written {
  const say = sayer({ ...matter.voice, medium: 'print' });
  const { answer, topic } = matter;
  const careful = cautionsFitting(matter).slice(0, 3);
  const asked = message('labeled', {
    label: message('heading', { of: 'asked' }),
    of: askingLabel(matter, asking),
  });
  const remedies = changes?.remedies.slice(0, mostChanges).map((each) => each.message) ?? [];
  const first = saidFirst(matter, asking);
  const { lines, cautions } = fittedWith(
    say,
    [
      must(title === '' ? text(topic.title) : own(title)),
      must(asked),
      ...first.map(must),
      must(answer.messages.sentence),
      may(block('missing', missingLines(matter, 6)), 1),
      may(block('limits', limitLines(matter, 12)), 1),
      may(block('findings', findingLines(matter)), 2),
      ...lists(matter).map((each) => may(each, 1)),
      may(block('changes', remedies), 3),
      may(block('assumed', assumedLines(matter)), 4),
      warning(must(block('careful', careful)), careful),
      must(message('under-rules', ruled(matter))),
    ],
    pageWords,
  );
  return { text: lines.join('\n\n'), cautions };
}
