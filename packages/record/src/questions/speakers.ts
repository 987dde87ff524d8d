import { isWay, type Pasted } from './bunch-lines';
import { isThing } from './no-name';

/** A line of a chat: who says it, and what. */
export type Spoken = { readonly asker: string; readonly words: string };

const word = "\\p{Lu}[\\p{L}'’-]+\\.?";
const speaker = `${word}(?: (?:${word}|\\p{Lu}\\.?)){0,2}|@[\\w.]{2,30}|[a-z][\\w.]*[\\d_][\\w.]*`;
/** “Mara: can it pull …”, “marsh_hen88: …” */
const spokenLine = new RegExp(`^\\s*(${speaker}):\\s+(\\S.*)$`, 'u');
/** What begins a line stands within so many letters of it. */
const mostOfHead = 60;

/** What people write before a colon that is nobody’s name. */
const label =
  /^(?:Dear|Hi|Hello|Hey|Re|Fwd|Note|Notes|Question|Questions|Answer|Answers|Reply|Update|Edit|Also|Plus|Background|Context|Situation|Goal|Plan|Plans|Setup|Story|Summary|Short|Version|Details?|Info|Facts|Numbers|Figures|Data|Make|Model|Year|Trim|Engine|Length|Width|Height|Size|Capacity|Rating|Dry|Wet|Empty|Loaded|Total|Front|Rear|Left|Right|Car|Van|Wagon|Vehicle|Rig|Water|Gear|Cargo|Load|People|Family|Kids?|Children|Adults?|Dogs?|Wife|Husband|Me|Us|Driver|Passengers?|Budget|Location|Place|Town|Date|Day|Time|When|Where|Who|What|Why|How|Name|Phone|Mail|Email|Address|Order|Item|Items|First|Second|Third|Next|Last|Finally|Thanks|Sorry|Please|Warning|Important|Option|Step|Part|Example|Yes|No|Monday|Today|Yesterday|Tomorrow)(?!\p{L})/iu;
const allCapitals = /^[\p{Lu}\d. ]+$/u;
/** In fewer words nobody asks anything, and nobody begins with a figure; such a line is one of a list. */
const fewest = 3;

/** Who says a line and what, where it begins with a name and a colon. */
export function spokenIn(line: string): Spoken | undefined {
  const [, asker, words] = spokenLine.exec(line.slice(0, mostOfHead)) ?? [];
  if (asker === undefined || words === undefined) return undefined;
  if (label.test(asker) || allCapitals.test(asker) || isWay(asker) || isThing(asker))
    return undefined;
  return { asker, words: `${words}${line.slice(mostOfHead)}` };
}

/** Whether a line that stands first may begin a chat: somebody says something in it. */
export const beginsChat = ({ words }: Spoken): boolean =>
  !/^\d/.test(words) && words.trim().split(/\s+/).length >= fewest;

/** A message with what the same speaker says later in the same chat. */
export const goesOn = (before: Pasted, text: string): Pasted => ({
  ...before,
  text: `${before.text}\n${text}`,
});
