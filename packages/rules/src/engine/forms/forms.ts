import type { Asked } from '../answer/answer';
import { refuseAsking, refuseName, refuseOptions } from '../check/asked';
import type { Topic } from '../define/shapes';
import { remedies } from '../remedy/remedies';
import { askingOf } from './asking';
import { askBack, slip } from './back';
import { known, post, short, spoken, ticket } from './brief';
import { everybodyOf } from './everybody/everybody';
import { type Changes, letter, page } from './long';
import { type Matter, matterOf } from './matter';
import { levelOf } from './verdict';
import { plainly, type Written } from './written';

/** The forms in which an answer leaves. */
export const formNames = [
  'ticket',
  'short',
  'spoken',
  'everybody',
  'post',
  'letter',
  'askBack',
  'sheet',
  'slip',
] as const;
export type FormName = (typeof formNames)[number];
export type Forms = Readonly<Record<FormName, string>>;

export type FormOptions = {
  /** Which of the topic's askings is answered first; absent: the one implied. */
  readonly asking?: string | undefined;
  readonly title?: string | undefined;
  /** What would change the outcome, where it has been looked for. */
  readonly changes?: Changes | undefined;
};

/** What would change it, looked for where nobody has. */
function changesOf(matter: Matter, { changes }: FormOptions): Changes | undefined {
  if (changes) return changes;
  const level = levelOf(matter);
  return level === 'stop' || level === 'care' ? remedies(matter.topic, matter.asked) : undefined;
}

const writers: Readonly<
  Record<FormName, (matter: Matter, asking: string | undefined, options: FormOptions) => Written>
> = {
  ticket: (matter, asking) => plainly(ticket(matter, asking)),
  short,
  spoken,
  post,
  everybody: everybodyOf,
  letter: (matter, asking, options) =>
    letter(matter, asking, changesOf(matter, options), options.title),
  askBack: (matter, asking) => plainly(askBack(matter, asking)),
  sheet: (matter, asking, options) =>
    page(matter, asking, changesOf(matter, options), options.title),
  slip: (matter, asking, { title }) => plainly(slip(matter, asking, title)),
};

/** One form of an answer. */
export const formOf = (
  name: FormName,
  topic: Topic,
  asked: Asked,
  options: FormOptions = {},
): string => writtenForm(name, topic, asked, options).text;

/** One form of an answer, and the cautions in it. */
export function writtenForm(
  name: FormName,
  topic: Topic,
  asked: Asked,
  options: FormOptions = {},
): Written {
  refuseName('no-such-part', 'forms', name, formNames);
  refuseOptions(options);
  const matter = matterOf(topic, asked);
  refuseAsking(topic, options.asking);
  return writers[name](matter, askingOf(matter, options.asking), options);
}

/**
 * The sentence that can be said though the verdict cannot: “A trailer of 4,300 lb empty comes to about
 * 4,816 lb on the road …”; '' where the verdict stands or there is nothing of the kind.
 *
 * @throws InputError as `answer` does
 */
export function knownOf(topic: Topic, asked: Asked, options: FormOptions = {}): string {
  refuseOptions(options);
  const matter = matterOf(topic, asked);
  refuseAsking(topic, options.asking);
  return known(matter, askingOf(matter, options.asking));
}

/**
 * All forms of an answer, and which asking they answer first.
 *
 * @throws InputError as `answer` does
 */
export function formsOf(
  topic: Topic,
  asked: Asked,
  options: FormOptions = {},
): { readonly asking: string | null; readonly forms: Forms } {
  refuseOptions(options);
  const matter = matterOf(topic, asked);
  refuseAsking(topic, options.asking);
  const asking = askingOf(matter, options.asking);
  const changes = changesOf(matter, options);
  const made = { ...options, ...(changes && { changes }) };
  const write = (name: FormName): string => writers[name](matter, asking, made).text;
  return {
    asking: asking ?? null,
    forms: {
      ticket: write('ticket'),
      short: write('short'),
      spoken: write('spoken'),
      everybody: write('everybody'),
      post: write('post'),
      letter: write('letter'),
      askBack: write('askBack'),
      sheet: write('sheet'),
      slip: write('slip'),
    },
  };
}
