import { answerNow, readFacts, type Topic } from '@tarebook/rules/engine';
import { dangersIn } from '../danger/find';
import type { Hit } from '../search';
import { askings } from '../words/askings';
import { elsewhere } from '../words/elsewhere';
import { aboutOver } from './about';
import { askingIn } from './asking';
import { refuseNoMessage, refuseNoMessages, refuseNoReading } from './doors';
import type { Evidence } from './evidence';
import { factsIn } from './facts';
import { firstReplies } from './first-reply';
import { goesOn } from './goes-on';
import type { AskedBefore } from './likeness';
import { loadsOf } from './loads';
import { saidOutright } from './outright';
import { peopleOf } from './people';
import { personalIn } from './personal';
import { repeatsOver } from './repeats';
import type { Message, QuestionPart, ReadMessage, Urgency } from './shapes';
import { partsOf } from './split';
import { namedIn, urgentIn, whyUrgent } from './urgent';

/** Longer messages are read as far as this; nobody asks in more. */
const mostCharacters = 6_000;
/** So much likelier than none a topic is taken, as a natural logarithm of the odds. */
const least = -0.8;
const mostAsked = 3;
const people = 'load.occupants';

export type ReadOptions = {
  readonly topics: Readonly<Record<string, Topic>>;
  /** Finds cases and notes; see `searchOver`. */
  readonly search?: (question: string) => readonly Hit[];
  /** Questions of filed cases, which show how a topic is asked about; see `askedBefore`. */
  readonly before?: readonly AskedBefore[];
};

/** The topic of a text, or none: it is never forced. */
export const topicOf = ([first]: readonly Evidence[], enough = least): Evidence | undefined =>
  first && first.score >= enough ? first : undefined;

/** What a topic asks whoever told nothing, in its order. */
function firstAsks(topic: Topic): readonly { fact: string; ask: string }[] {
  return answerNow(topic, { facts: {} }).missing.map(({ fact, ask }) => ({ fact, ask }));
}

/** Facts that the topic itself refuses are none. */
function sound(
  topic: Topic,
  told: ReturnType<typeof factsIn>,
): Pick<ReturnType<typeof factsIn>, 'facts' | 'words'> {
  const refused = new Set(readFacts(topic, told.facts).problems.map(({ fact }) => fact));
  const keep = (of: Readonly<Record<string, string>>) =>
    Object.fromEntries(Object.entries(of).filter(([fact]) => !refused.has(fact)));
  return { facts: keep(told.facts), words: keep(told.words) };
}

/** What was told before and is not told anew; nothing where there is none. */
function toldIn(
  { facts, toldBefore = {} }: QuestionPart,
  now: Readonly<Record<string, string>>,
): Pick<QuestionPart, 'toldBefore'> {
  const told = Object.entries({ ...toldBefore, ...facts });
  const left = told.filter(([fact]) => !Object.hasOwn(now, fact));
  return left.length === 0 ? {} : { toldBefore: Object.fromEntries(left) };
}

/** Reads messages one after the other; the same messages are always read the same. */
export function reader(options: ReadOptions): (message: Message) => ReadMessage {
  refuseNoReading(options);
  const { topics, search, before = [] } = options;
  const about = aboutOver(topics, before);
  // How people ask tells how seldom a word is said, before anybody has asked.
  const known = [...before.map(({ text }) => text), ...Object.values(askings).flat(), ...elsewhere];
  const asks = new Map<string, ReturnType<typeof firstAsks>>();
  const sameBefore = repeatsOver(known);

  function asksOf(
    topic: Topic,
    told: Readonly<Record<string, string>>,
    isRidden: boolean,
  ): readonly string[] {
    const all = asks.get(topic.id) ?? firstAsks(topic);
    asks.set(topic.id, all);
    const open = all.filter(
      ({ fact }) => !Object.hasOwn(told, fact) && !(isRidden && fact === people),
    );
    return open.slice(0, mostAsked).map(({ ask }) => ask);
  }

  function partOf(
    text: string,
    danger: Urgency | null,
    before?: QuestionPart | undefined,
  ): QuestionPart {
    const outright = danger === null ? saidOutright(topics, text) : undefined;
    const found = outright ?? topicOf(about(text, danger));
    const own = found && topics[found.topic];
    const topicBefore = before?.topic ? topics[before.topic] : undefined;
    const isOn = topicBefore !== undefined && goesOn(text, topicBefore, own);
    const topic = isOn ? topicBefore : own;
    const told = topic && factsIn(topic, text);
    const { facts, words } = topic && told ? sound(topic, told) : { facts: {}, words: {} };
    const open = (told?.open ?? []).flatMap(({ amount, from, to, among }) =>
      among.length < 2
        ? []
        : [{ words: text.slice(from, to), value: `${amount.value} ${amount.unit ?? 'lb'}`, among }],
    );
    const asOpen = isOn && open.length === 0 ? (before?.open ?? []) : open;
    const riding = topic ? peopleOf(topic, text) : [];
    const loads = topic ? loadsOf(topic, text) : [];
    const isRidden = riding.length > 0 || loads.some(({ list }) => list === people);
    const near = search?.(text).find((hit) =>
      topic ? hit.topic === topic.id : !Object.hasOwn(topics, hit.topic),
    );
    return {
      text,
      topic: topic?.id ?? null,
      ...(topic && askingIn(topic, text)),
      ...(isOn && before && toldIn(before, facts)),
      because: (topic === own ? found?.because : before?.because) ?? [],
      facts,
      words,
      ...(riding.length > 0 && { people: riding }),
      ...(loads.length > 0 && { loads }),
      ...(asOpen.length > 0 && { open: asOpen }),
      ask: topic ? asksOf(topic, facts, isRidden) : [],
      answeredBy: near?.path ?? null,
    };
  }

  return (message) => {
    refuseNoMessage(message);
    const { id, text: whole } = message;
    const text = whole.slice(0, mostCharacters).replaceAll('\0', ' ').trim();
    const urgent = urgentIn(text);
    const said = partsOf(text);
    const parts: QuestionPart[] = [];
    for (const each of said) {
      parts.push(partOf(each, namedIn(said.length === 1 ? text : each), parts.at(-1)));
    }
    const sameAs = sameBefore({
      ...{ id, text },
      about: parts.map((part) => part.topic).join(' '),
      facts: parts.flatMap((part) =>
        Object.entries(part.facts).map(([fact, value]) => `${fact} ${value}`),
      ),
      danger: dangersIn(text)
        .find(({ sign }) => sign.kind === urgent)
        ?.sign.lists.join(' / '),
    });
    return {
      id,
      parts,
      urgent,
      urgentBecause: whyUrgent(text),
      firstReply: urgent && firstReplies[urgent],
      sameAs,
      personal: personalIn(text),
    };
  };
}

/** All messages read in their order; those that are urgent stand first. */
export function readMessages(
  messages: readonly Message[],
  options: ReadOptions,
): readonly ReadMessage[] {
  refuseNoMessages(messages);
  const read = reader(options);
  const all = messages.map(read);
  return [...all.filter(({ urgent }) => urgent), ...all.filter(({ urgent }) => !urgent)];
}
