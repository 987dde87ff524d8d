import type { QuestionPart } from '@tarebook/record';
import { caseAddress } from '../state/address';
import { checksum } from '../state/checksum';
import * as kept from '../state/kept';
import { pack } from '../state/link';
import type { Asked } from '../state/questions';
import type { Answered } from './answer-shapes';

const bytes = new TextEncoder();
const sumOf = (question: string): string => checksum(bytes.encode(question)).toString(36);

/** The name of the case that one question of a message is; by it what comes back finds its question. */
export const caseName = ({ id }: Pick<Asked, 'id'>, { text }: Pick<QuestionPart, 'text'>): string =>
  `asked-${id}.${sumOf(text)}`;

/** Of which message and which question a case is; undefined for any other case. */
export function questionOf(
  name: string,
): { readonly id: string; readonly sum: string } | undefined {
  const [, id, sum] = /^asked-([a-z\d]+(?:-\d+)?)\.([a-z\d]+)$/.exec(name) ?? [];
  return id === undefined || sum === undefined ? undefined : { id, sum };
}

export const isQuestion = (sum: string, question: string): boolean => sumOf(question) === sum;

/** In these somebody else is asked for what is not known, and may answer by a link. */
const carriesLink: ReadonlySet<string> = new Set(['askBack', 'slip']);
/** A link longer than this is cut by programs it passes through. */
const mostForLink = 8_000;

const ownHosts: ReadonlySet<string> = new Set(['localhost', '127.0.0.1', '[::1]']);

/** Whether a page opens for nobody but who sits before it. */
export function isOwnAlone(page: string): boolean {
  const { protocol, hostname } = new URL(page);
  return protocol === 'file:' || ownHosts.has(hostname);
}

/** What is asked back or handed on, with the link in which it is filled in and comes back. */
export async function withLink(
  answered: Answered,
  asked: Asked,
  part: QuestionPart,
): Promise<Answered> {
  const { doc, form, saved, text } = answered;
  if (doc === undefined || !carriesLink.has(form)) return answered;
  const at = caseAddress(String(saved.topic), caseName(asked, part));
  const page = location.href.replace(/#.*$/, '');
  if (isOwnAlone(page)) return answered;
  // A browser that cannot pack has its answer without a link.
  const packed = await pack(doc).catch(() => undefined);
  if (packed === undefined) return answered;
  const link = `${page}${at}/${packed}`;
  if (link.length > mostForLink) return answered;
  const says =
    'Or fill it in here, press “Send the answers back”, and send me the link it gives you:';
  return { ...answered, text: `${text}\n\n${says}\n${link}` };
}

/** A question as a case that opens. */
type OpensAs = {
  readonly address: string;
  /** Of which text the case was made, for the record; undefined where somebody changed it since. */
  readonly made?: string;
  /** Somebody changed the case, and other answers stand with the question since it was made. */
  readonly isStale: boolean;
};

/** Keeps a question as a case; one that nobody changed is made anew, so that its answers are those of now. */
export async function caseOfQuestion(
  doc: string,
  asked: Asked,
  part: QuestionPart,
  { keptCase, keep }: Pick<typeof kept, 'keptCase' | 'keep'> = kept,
): Promise<OpensAs> {
  const topic = part.topic ?? '';
  const name = caseName(asked, part);
  const address = caseAddress(topic, name);
  const made = sumOf(doc);
  const { cases = {} } = asked;
  const before = Object.hasOwn(cases, part.text) ? cases[part.text] : undefined;
  try {
    const here = await keptCase(topic, name);
    if (here && here.text !== doc && sumOf(here.text) !== before) {
      return { address, isStale: before !== made };
    }
    if (here?.text !== doc) await keep({ topic, name, text: doc, at: Date.now() });
    return { address, made, isStale: false };
  } catch {
    // A device that keeps nothing still opens it: the whole case goes into the address.
    return { address: `${address}/${await pack(doc)}`, made, isStale: false };
  }
}
