import type { CellGiven, FactGiven, RowGiven } from '../check/given';
import { message } from '../words/message';
import { sayer } from '../words/say';
import { own, type Sayable, text } from '../words/value';
import { askedFirst, askingLabel } from './asking';
import { asksOf } from './asks';
import type { Matter } from './matter';
import { levelOf, urgentSaid, verdictSaid } from './verdict';
import { whereToLook } from './where';

/** More than these in one message nobody answers. */
const mostAsked = 5;

/** A message back: only what decides, in order, with where each is read. */
export function askBack(matter: Matter, asking: string | undefined): string {
  const say = sayer(matter.voice);
  const asks = asksOf(matter, asking).slice(0, mostAsked);
  const urgent = urgentSaid(matter).map(say);
  if (asks.length === 0) return [...urgent, say(message('nothing-to-ask', {}))].join('\n');
  const lines = asks.map((fact, i) =>
    message('ask-numbered', { place: i + 1, ask: text(fact.ask), where: whereToLook(fact) }),
  );
  return [...urgent, ...[message('to-answer', {}), ...lines].map(say)].join('\n');
}

/** One value as it was given, in the units of the reader where it has its own. */
function cell(given: CellGiven): Sayable {
  if (typeof given === 'string') return own(given);
  if (typeof given === 'number') return { lo: given, hi: given, unit: '', style: 'exact' };
  const { unit } = given;
  if ('value' in given) return { lo: given.value, hi: given.value, unit, style: 'exact' };
  return { lo: given.lo ?? -Infinity, hi: given.hi ?? Infinity, unit, style: 'exact' };
}

const isRows = (fact: FactGiven): fact is readonly RowGiven[] => Array.isArray(fact);

function given(fact: FactGiven): Sayable {
  if (!isRows(fact)) return cell(fact);
  const of = fact.map(({ label, ...cells }) =>
    message('row-told', {
      label: label === undefined ? own('') : cell(label),
      cells: Object.values(cells).map(cell),
    }),
  );
  return message('rows-told', { of });
}

/** For service, sales or the maker: what is known, what is open, what was promised and by when. */
export function slip(matter: Matter, asking: string | undefined, title = ''): string {
  const say = sayer(matter.voice);
  const { topic, asked, answer } = matter;
  const known = Object.entries(asked.facts).flatMap(([id, fact]) => {
    const declared = topic.facts[id];
    if (!declared) return [];
    const from = asked.readFrom?.[id];
    return [
      message('fact-read', {
        label: text(declared.label),
        value: given(fact),
        from: from ? own(from) : null,
      }),
    ];
  });
  const open = asksOf(matter, asking).map(({ label, ask }) =>
    message('labeled', { label: text(label), of: text(ask) }),
  );
  const part = (of: string, lines: readonly Sayable[]) =>
    message('part', { title: message('heading', { of }), of: lines });
  const said = [...urgentSaid(matter), ...askedFirst(matter, asking)];
  const outcome = levelOf(matter) === 'unknown' ? verdictSaid(matter) : [answer.messages.sentence];
  return [
    message('goes-to', {}),
    ...(title === '' ? [] : [own(title)]),
    part('asked', [askingLabel(matter, asking)]),
    part('known', known),
    part('open', open),
    part('answer', [...said, ...outcome]),
    message('promised-by', {}),
    message('under-rules', { topic: answer.topic, rules: answer.rules, asOf: answer.asOf }),
  ]
    .map(say)
    .filter((each) => each !== '')
    .join('\n\n');
}
