import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { notesListed } from '../cases/rows';
import { topicsListed, topicTitle } from '../cases/topics';
import { copyFrom } from '../elements/copy-text';
import { PlainElement } from '../elements/plain-element';
import { caseAddress } from '../state/address';
import type { Asked } from '../state/questions';
import { guarded } from '../state/reply';
import { isIn, type Round } from '../state/round';
import { type Answered, type AnswerForm, answerForms } from './answer-shapes';
import { caseOfQuestion, withLink } from './back-link';
import { AnswerLeft, AskedChanged, SpokenToggled } from './events';
import { aboutOf, soughtOf } from './known';
import type { Sought } from './reader';
import { listsIn } from './rows-told';
import { factsOf, otherBack, type ReadPart, returnedText } from './told-so-far';
import { formWords, stretches } from './words';

/** One question of a message: its words with what was read in them, and its answer, ready to leave. */
export class AskedPart extends PlainElement {
  static override properties = {
    asked: { attribute: false },
    question: { attribute: false },
    personal: { attribute: false },
    answer: { attribute: false },
    labels: { attribute: false },
    round: { attribute: false },
    answered: { state: true },
    form: { state: true },
    said: { state: true },
  };
  declare asked: Asked;
  declare question: ReadPart;
  /** Words of the message that never leave. */
  declare personal: readonly string[];
  declare answer: (of: Sought, isFirst?: boolean) => Promise<Answered | undefined>;
  /** What facts are called, by id. */
  declare labels: (topic: string, fact: string) => string;
  /** The round that is still to be spoken. */
  declare round: Round | undefined;
  declare answered: Answered | undefined | 'none';
  /** The form a person chose; undefined: the one that fits. */
  declare form: AnswerForm | undefined;
  declare said: string;
  private answeredFor = '';
  /** The question as a case when it was said that the one kept is another. */
  private saidOfCase = '';

  constructor() {
    super();
    this.said = '';
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (!['question', 'asked', 'form'].some((each) => changed.has(each))) return;
    const of = soughtOf(this.asked, this.question, this.form ?? null);
    const key = JSON.stringify(of);
    if (key === this.answeredFor) return;
    this.answeredFor = key;
    this.answered = of ? undefined : 'none';
    if (!of) return;
    const { asked, question } = this;
    this.answer(of, this.hasUpdated)
      .then((answered) => answered && withLink(answered, asked, question))
      .then((answered) => {
        if (this.answeredFor === key) this.answered = answered ?? 'none';
      });
  }

  private change(change: Partial<Asked>): void {
    this.dispatchEvent(new AskedChanged({ ...this.asked, ...change }));
  }

  private strike(facts: readonly string[]): void {
    const { struck } = this.asked;
    const gone = facts.every((each) => struck.includes(each));
    const others = struck.filter((each) => !facts.includes(each));
    this.change({ struck: gone ? others : [...others, ...facts] });
  }

  private words(): readonly TemplateResult[] {
    const { asked, question: part } = this;
    return stretches(part, this.personal).map(({ text, kind, facts }) => {
      if (kind === 'plain') return html`${text}`;
      if (kind === 'personal') {
        return html`<span class="asked-personal" title="Personal: it is left out wherever this leaves">${text}</span>`;
      }
      const struck = facts.every((each) => asked.struck.includes(each));
      const told = facts.map((each) => this.factSaid(each)).join(', ');
      return html`<button type="button" class="asked-fact" aria-pressed=${struck ? 'false' : 'true'}
        title="${struck ? 'Not taken' : 'Read'} as ${told}; press to ${struck ? 'take it' : 'strike it out'}"
        @click=${() => this.strike(facts)}>${text}</button>`;
    });
  }

  private factSaid(fact: string): string {
    const [id = '', ...value] = fact.split(': ');
    return `${this.labels(this.question.topic ?? '', id)}: ${value.join(': ')}`;
  }

  private facts() {
    const { asked, question: part } = this;
    const lists = new Set(listsIn(part).map(({ fact }) => fact));
    const told = Object.entries(factsOf(asked, part)).filter(([fact]) => !lists.has(fact));
    const said = told.map(([fact, value]) => this.factSaid(returnedText(fact, value)));
    return html`<span class="small soft">${said.join(' · ')}</span>
      ${listsIn(part).map(({ said: each }) => this.told(each))} ${this.back()}`;
  }

  /** What is no single word of the message, to be struck out by a touch all the same. */
  private told(fact: string) {
    const isStruck = this.asked.struck.includes(fact);
    const told = this.factSaid(fact);
    return html`<button type="button" class="asked-fact small" aria-pressed=${isStruck ? 'false' : 'true'}
      title="${isStruck ? 'Not taken' : 'Read'} as ${told}; press to ${isStruck ? 'take it' : 'strike it out'}"
      @click=${() => this.strike([fact])}>${told}</button>`;
  }

  private back() {
    const { asked, question: part } = this;
    const all = asked.back && Object.hasOwn(asked.back, part.text) ? asked.back[part.text] : {};
    const told = Object.entries(all ?? {});
    if (told.length === 0) return nothing;
    const other = otherBack(asked, part);
    if (other !== undefined) {
      return html`<span class="small asked-back">What came back was asked by “${topicTitle(other)}”; it counts only where the question is about that.</span>`;
    }
    return html`<span class="small asked-back">Came back: ${told.map(([fact, value]) =>
      this.told(returnedText(fact, value)),
    )}</span>`;
  }

  private about() {
    const { asked, question: part } = this;
    const now = aboutOf(asked, part);
    const option = (value: string, words: string) =>
      html`<option value=${value} ?selected=${value === now}>${words}</option>`;
    return html`<label class="asked-about"><span class="small soft">About</span>
      <select .value=${live(now)} @change=${({ target }: Event) => {
        if (!(target instanceof HTMLSelectElement)) return;
        this.change({ topics: { ...asked.topics, [part.text]: target.value } });
      }}>
        ${option('none', 'no rules of ours')}
        <optgroup label="Rules">${topicsListed.map(({ id, title }) => option(id, title))}</optgroup>
        <optgroup label="Notes">${notesListed.map(({ name, title }) => option(`note/${name}`, title))}</optgroup>
      </select></label>`;
  }

  /** The nearest note is shown, and never taken by itself. */
  private near() {
    const { asked, question: part } = this;
    const name = /^note\/(.+)$/.exec(part.answeredBy ?? '')?.[1];
    const note = notesListed.find((each) => each.name === name);
    if (!note || aboutOf(asked, part) !== 'none') return nothing;
    return html`<button type="button" class="quiet" @click=${() =>
      this.change({
        topics: { ...asked.topics, [part.text]: `note/${note.name}` },
      })}>Answer with the note “${note.title}”</button>`;
  }

  /** A case that is like it, to read; or the question itself as a case, with all that is told. */
  private cases() {
    const { asked, question: part, answered } = this;
    const [, topic = '', name = ''] = /^([^/]+)\/(.+)$/.exec(part.answeredBy ?? '') ?? [];
    const near = topic !== 'note' && topic === aboutOf(asked, part);
    const doc = answered === 'none' ? undefined : answered?.doc;
    const open = async (): Promise<void> => {
      if (doc === undefined) return;
      const { address, made, isStale } = await caseOfQuestion(doc, asked, part);
      if (isStale && this.saidOfCase !== doc) {
        this.saidOfCase = doc;
        this.said =
          'The case was changed by hand, and other answers stand here since; press once more to open it as it was left.';
        return;
      }
      if (made !== undefined && asked.cases?.[part.text] !== made) {
        this.change({ cases: { ...this.asked.cases, [part.text]: made } });
      }
      location.hash = address;
    };
    return html`${doc === undefined ? nothing : html`<button type="button" class="quiet" @click=${open}>Open as a case</button>`}
      ${near ? html`<a class="small" href=${caseAddress(topic, name)}>A case like this: ${name.replaceAll('-', ' ')}</a>` : nothing}`;
  }

  private get shownForm(): AnswerForm | undefined {
    const { answered } = this;
    if (!answered || answered === 'none') return undefined;
    return answered.form;
  }

  private place = (form: AnswerForm | undefined): string =>
    `${form ?? 'own'} ${this.question.text}`;

  private get text(): string {
    const { answered, shownForm: form } = this;
    const ready = answered && answered !== 'none' ? answered.text : '';
    return this.asked.wordings[this.place(form)] ?? ready;
  }

  private word(text: string): void {
    const { [this.place(this.shownForm)]: _, ...others } = this.asked.wordings;
    const wordings = { ...others, [this.place(this.shownForm)]: text };
    this.change({ wordings });
  }

  private async copy(): Promise<void> {
    const field = this.querySelector('textarea');
    if (!field || field.value.trim() === '') return;
    const { answered, shownForm: form } = this;
    const cautions = answered && answered !== 'none' ? answered.cautions : [];
    const { text, putBack } = guarded(field.value, cautions);
    field.value = text;
    if (putBack.length > 0) this.word(text);
    const copied = await copyFrom(field);
    this.said =
      copied === 'copied'
        ? `Copied${putBack.length > 0 ? '; its caution was put back' : ''}.`
        : 'This browser does not let the page copy; the text is marked, so press Ctrl or ⌘ and C.';
    const { asked, question: part } = this;
    const given = answered === 'none' ? undefined : answered;
    this.dispatchEvent(
      new AnswerLeft({
        ...{ asked, question: part.text, text, answered: given },
        form: form ?? 'own words',
      }),
    );
  }

  private speak() {
    const { asked, question, round } = this;
    const isSpoken = round !== undefined && isIn(round, asked.id, question.text);
    return html`<button type="button" aria-pressed=${isSpoken} @click=${() =>
      this.dispatchEvent(
        new SpokenToggled(asked, question),
      )}>${isSpoken ? 'In the round' : 'Speak it'}</button>`;
  }

  private reply() {
    const { answered, shownForm: now } = this;
    if (answered === undefined) return html`<p class="small soft">Working it out …</p>`;
    const forms = answered === 'none' ? [] : answerForms;
    const label = now ? formWords[now] : 'In your own words';
    return html`<div class="asked-answer">
      ${
        forms.length === 0
          ? html`<p class="small soft">${this.near()} ${label}:</p>`
          : html`<div class="asked-forms" role="group" aria-label="Form of the answer">${forms.map(
              (form) =>
                html`<button type="button" class="quiet" aria-pressed=${form === now} @click=${() => {
                  this.form = form;
                  this.said = '';
                }}>${formWords[form]}</button>`,
            )}</div>`
      }
      <textarea rows="3" aria-label="Answer: ${label}" .value=${live(this.text)} @change=${(
        event: Event,
      ) => {
        if (event.target instanceof HTMLTextAreaElement) this.word(event.target.value);
      }}></textarea>
      <div class="acts"><button type="button" @click=${this.copy}>Copy</button> ${this.speak()} ${this.cases()}
        <span class="small soft" role="status">${this.said}</span></div>
    </div>`;
  }

  protected override render() {
    return html`<div class="asked-part">
      <div class="asked-question"><p class="asked-words">${this.words()}</p>
        <p class="asked-known">${this.about()} ${this.facts()}</p>
        ${this.question.refused ? html`<p class="error">${this.question.refused}</p>` : nothing}</div>
      ${this.reply()}
    </div>`;
  }
}

customElements.define('asked-part', AskedPart);
