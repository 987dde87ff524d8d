import { topics } from '@tarebook/rules';
import { html, nothing } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { byTopic, topicChoice } from '../elements/topic-choice';
import { allFiled } from '../state/filed';
import { frontLine } from '../state/front-line';
import { type Group, type GroupCase, readLearners } from '../state/group';
import { allKept } from '../state/kept';
import { walkedCase } from './record';

export class ClassBegun extends CustomEvent<{ learners: readonly string[]; cases: GroupCase[] }> {
  constructor(learners: readonly string[], cases: GroupCase[]) {
    super('class-begun', { detail: { learners, cases }, bubbles: true });
  }
}

type Choice = GroupCase & { readonly level: string };

const levels = ['starter', 'working', 'hard', ''];

/** Every case that can be walked, as changed on this device, else as it came; the easy first. */
async function choices(): Promise<readonly Choice[]> {
  const filed = await allFiled();
  const kept = await allKept().catch(() => []);
  const same = (a: { topic: string; name: string }, b: { topic: string; name: string }) =>
    a.topic === b.topic && a.name === b.name;
  const own = kept.filter((each) => !filed.some((one) => same(one, each)));
  const now = filed.map((each) => kept.find((one) => same(one, each)) ?? each);
  const found = [...now, ...own].map(({ topic, name, text }) => {
    return {
      topic,
      name,
      text,
      title: frontLine(text, 'title') || name,
      level: frontLine(text, 'level'),
    };
  });
  const rank = ({ level }: Choice): number => levels.indexOf(level);
  return found.toSorted((a, b) => byTopic(a, b) || rank(a) - rank(b));
}

const keyOf = ({ topic, name }: GroupCase): string => `${topic}/${name}`;

/** Where a class is set up: who takes part, and which cases are walked. */
export class ClassStart extends PlainElement {
  static override properties = {
    all: { state: true },
    chosen: { state: true },
    about: { state: true },
    wrongNames: { state: true },
    wrongCases: { state: true },
    last: { attribute: false },
  };
  declare all: readonly Choice[] | undefined;
  declare chosen: ReadonlySet<string>;
  /** The topic shown; '' shows all. */
  declare about: string;
  declare wrongNames: string;
  declare wrongCases: string;
  /** The class before this one, whose learners are offered again. */
  declare last: Group | undefined;

  constructor() {
    super();
    this.chosen = new Set();
    this.about = '';
    this.wrongNames = '';
    this.wrongCases = '';
  }

  override connectedCallback(): void {
    super.connectedCallback();
    choices().then(
      (all) => {
        this.all = all;
      },
      () => {
        this.wrongCases = 'The cases could not be read; reload the page.';
        this.all = [];
      },
    );
  }

  private choose(keys: readonly string[], on: boolean): void {
    const next = new Set(this.chosen);
    for (const key of keys) {
      if (on) next.add(key);
      else next.delete(key);
    }
    this.chosen = next;
    this.wrongCases = '';
  }

  private begin(event: Event): void {
    event.preventDefault();
    const field = this.querySelector('textarea');
    const learners = readLearners(field?.value ?? '');
    const cases = (this.all ?? []).filter((each) => this.chosen.has(keyOf(each)));
    this.wrongNames = typeof learners === 'string' ? learners : '';
    const unread = cases.find(({ text }) => !walkedCase(text));
    this.wrongCases =
      cases.length === 0
        ? 'No case is chosen; choose one above, or a whole level.'
        : unread
          ? `“${unread.title}” cannot be judged yet; open it and mend what is marked there, or leave it out.`
          : '';
    if (typeof learners === 'string') {
      field?.focus();
      return;
    }
    if (this.wrongCases !== '') {
      this.querySelector<HTMLElement>('fieldset button')?.focus();
      return;
    }
    this.dispatchEvent(
      new ClassBegun(
        learners,
        cases.map(({ topic, name, title, text }) => ({ topic, name, title, text })),
      ),
    );
  }

  private group(topic: string, level: string) {
    const group = this.all?.filter((each) => each.topic === topic && each.level === level) ?? [];
    if (group.length === 0) return nothing;
    const keys = group.map(keyOf);
    const whole = keys.every((key) => this.chosen.has(key));
    const title = `${topics[topic]?.title ?? topic}${level ? ` · ${level}` : ''}`;
    return html`<fieldset class="choices">
      <legend>${title}</legend>
      <button type="button" @click=${() => this.choose(keys, !whole)}>${whole ? 'None of' : 'All of'} ${title}</button>
      ${group.map((each) => {
        const key = keyOf(each);
        return html`<label><input
          type="checkbox"
          .checked=${this.chosen.has(key)}
          @change=${() => this.choose([key], !this.chosen.has(key))}
        /> ${each.title}</label>`;
      })}
    </fieldset>`;
  }

  protected override render() {
    const { all, wrongNames, wrongCases, last } = this;
    const about = all?.filter(({ topic }) => this.about === '' || topic === this.about);
    const named = [...new Set(about?.map(({ topic }) => topic))];
    return html`<form @submit=${this.begin} novalidate>
      <h2>Who takes part</h2>
      <label for="learners">First names or numbers, one on a line</label>
      <textarea
        id="learners"
        rows="5"
        autocomplete="off"
        spellcheck="false"
        aria-invalid=${wrongNames ? 'true' : 'false'}
        aria-describedby="learners-wrong"
        .value=${last?.learners.join('\n') ?? ''}
      ></textarea>
      <p class="error" id="learners-wrong" role="alert">${wrongNames}</p>
      <h2>Which cases</h2>
      ${
        all === undefined
          ? html`<p class="soft">Reading the cases …</p>`
          : html`<div class="finder">${topicChoice(this.about, all, (topic) => {
              this.about = topic;
            })}</div>
            ${named.map((topic) => levels.map((level) => this.group(topic, level)))}`
      }
      <p class="error" role="alert">${wrongCases}</p>
      <div class="acts">
        <button>Begin with ${this.chosen.size} ${this.chosen.size === 1 ? 'case' : 'cases'}</button>
      </div>
    </form>`;
  }
}

customElements.define('class-start', ClassStart);
