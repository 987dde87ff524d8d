/** A message as it came in: by which channel, when, from whom, and its words. */
export type Message = {
  readonly id: string;
  readonly channel: string;
  readonly askedOn: string;
  readonly asker: string;
  readonly text: string;
};

export const urgencies = [
  'gas',
  'alarm',
  'smoke',
  'heat',
  'shock',
  'frost',
  'wheel',
  'brakes',
  'coupling',
  'sway',
  'lift',
  'doubt',
] as const;
export type Urgency = (typeof urgencies)[number];

/** One question of a message: what it is about, and what it tells. */
export type QuestionPart = {
  readonly text: string;
  /** A rule set's id; null where none is meant. It is never forced. */
  readonly topic: string | null;
  /** Which of the topic's askings its words put; absent where they name none. */
  readonly asking?: string;
  /** The fact on which that hangs first; absent where nothing says which. */
  readonly look?: string;
  /** What the question before told, where this one goes on about the same; as a case writes it. */
  readonly toldBefore?: Readonly<Record<string, string>>;
  /** The words for which that topic was taken. */
  readonly because: readonly string[];
  /** Values as a case writes them. */
  readonly facts: Readonly<Record<string, string>>;
  /** The very words of the message that each fact came from. */
  readonly words: Readonly<Record<string, string>>;
  /** Who rides along, where the topic asks for them and somebody said so. */
  readonly people?: readonly {
    readonly who: 'adult' | 'child' | 'dog';
    readonly count: number;
    /** What each of them weighs, and the very words; absent where nobody said. */
    readonly weight?: string;
    readonly words?: string;
  }[];
  /** What is packed and weighed, where the topic asks for it, with the very words. */
  readonly loads?: readonly {
    readonly list: string;
    readonly label: string;
    readonly weight: string;
    readonly words: string;
  }[];
  /** Figures that may be any of several facts, as nobody said which; none of them is told by it. */
  readonly open?: readonly {
    readonly words: string;
    readonly value: string;
    readonly among: readonly string[];
  }[];
  /** What decides next, as it is asked. */
  readonly ask: readonly string[];
  /** The case or note that is nearest to an answer. */
  readonly answeredBy: string | null;
};

export type ReadMessage = {
  readonly id: string;
  readonly parts: readonly QuestionPart[];
  readonly urgent: Urgency | null;
  /** The words for which it was taken to be urgent; none where it was not. */
  readonly urgentBecause: readonly string[];
  /** What is answered at once where something is urgent; null elsewhere. */
  readonly firstReply: string | null;
  /** The message that asked the same before. */
  readonly sameAs: string | null;
  /** The very words that are personal, and are masked on every way out. */
  readonly personal: readonly string[];
};
