import { html, nothing, type PropertyValues } from 'lit';
import { live } from 'lit/directives/live.js';
import { notesListed } from '../cases/rows';
import { copyFrom } from '../elements/copy-text';
import { PlainElement } from '../elements/plain-element';
import { caseAddress } from '../state/address';
import type { Asked } from '../state/questions';
import { guarded } from '../state/reply';
import { isIn, type Round } from '../state/round';
import { type Answered, type AnswerForm, answerForms, speakable } from './answer-shapes';
import { caseOfQuestion, withLink } from './back-link';
import { AnswerLeft, AskedChanged, SpokenToggled } from './events';
import { formFor, withForm } from './form-for';
import { aboutOf, soughtOf } from './known';
import type { Sought } from './reader';
import type { ReadPart } from './told-so-far';
import { withUnread } from './unread';
import { formWords } from './words';

/** The answer to one question, in the form that fits or that a person chose, ready to leave. */
export class PartAnswer extends PlainElement {
  static override properties = {
    asked: { attribute: false },
    question: { attribute: false },
    personal: { attribute: false },
    answer: { attribute: false },
    round: { attribute: false },
    answered: { state: true },
    said: { state: true },
  };
  declare asked: Asked;
  declare question: ReadPart;
  /** Words of the message that never leave. */
  declare personal: readonly string[];
  declare answer: (of: Sought, isFirst?: boolean) => Promise<Answered | undefined>;
  /** The round that is still to be spoken. */
  declare round: Round | undefined;
  declare answered: Answered | undefined | 'none';
  declare said: string;
  private answeredFor = '';
  /** What is being typed just now; it stays, whatever is drawn anew meanwhile. */
  private draft: { readonly of: string; readonly text: string } | undefined;
  /** The question as a case when it was said that the one kept is another. */
  private saidOfCase = '';

  constructor() {
    super();
    this.said = '';
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (!changed.has('question') && !changed.has('asked')) return;
    const form = formFor(this.asked, this.question) ?? null;
    const of = soughtOf(this.asked, this.question, form);
    const key = JSON.stringify(of);
    if (key === this.answeredFor) return;
    this.answeredFor = key;
    this.answered = of ? undefined : 'none';
    if (!of) return;
    const { asked, question, personal } = this;
    this.answer(of, this.hasUpdated)
      .then((answered) => answered && withUnread(answered, question, personal))
      .then((answered) => answered && withLink(answered, asked, question))
      .then((answered) => {
        if (this.answeredFor === key) this.answered = answered ?? 'none';
      });
  }

  private change(change: Partial<Asked>): void {
    this.dispatchEvent(new AskedChanged({ ...this.asked, ...change }));
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

  /** The very question of the very message, and the form that is answered in. */
  private get whole(): string {
    return `${this.asked.id} ${this.place(this.shownForm)}`;
  }

  private typed = ({ target }: Event): void => {
    if (target instanceof HTMLTextAreaElement) this.draft = { of: this.whole, text: target.value };
  };

  private worded = ({ target }: Event): void => {
    this.draft = undefined;
    if (target instanceof HTMLTextAreaElement) this.word(target.value);
  };

  private word(text: string): void {
    const { [this.place(this.shownForm)]: _, ...others } = this.asked.wordings;
    const wordings = { ...others, [this.place(this.shownForm)]: text };
    this.change({ wordings });
  }

  private choose(form: AnswerForm): void {
    this.said = '';
    this.change(withForm(this.asked, this.question, form));
  }

  private async copy(): Promise<void> {
    const field = this.querySelector('textarea');
    if (!field || field.value.trim() === '') return;
    const { answered, shownForm: form } = this;
    const cautions = answered && answered !== 'none' ? answered.cautions : [];
    const { text, putBack } = guarded(field.value, cautions);
    field.value = text;
    if (putBack.length > 0) this.word(text);
    const isCopied = (await copyFrom(field)) === 'copied';
    this.said = isCopied
      ? `Copied${putBack.length > 0 ? '; its caution was put back' : ''}.`
      : 'This browser does not let the page copy; the text is marked, so press Ctrl or ⌘ and C. Then press Done.';
    const { asked, question: part } = this;
    const given = answered === 'none' ? undefined : answered;
    this.dispatchEvent(
      new AnswerLeft({
        ...{ asked, question: part.text, text, answered: given, isCopied },
        form: form ?? 'own words',
      }),
    );
  }

  private speak() {
    const { asked, question, round } = this;
    const isSpoken = round !== undefined && isIn(round, asked.id, question.text);
    return html`<button type="button" aria-pressed=${isSpoken} @click=${() =>
      this.dispatchEvent(
        new SpokenToggled(asked, question, this.shownForm),
      )}>${isSpoken ? 'In the round' : 'Speak it'}</button>`;
  }

  /** What only whoever answers has to know: what is not used, what is left out, how it is spoken. */
  private beside() {
    const { answered, shownForm: form, asked, question, round } = this;
    if (!answered || answered === 'none' || form === undefined) return nothing;
    const isOwn = Object.hasOwn(asked.wordings, this.place(form));
    const { putBack } = guarded(this.text, isOwn && speakable.has(form) ? answered.cautions : []);
    const isSpoken = round !== undefined && isIn(round, asked.id, question.text);
    const lines = [
      answered.beside ?? '',
      ...putBack.map((each) => `Your words leave out: ${each}`),
      isSpoken && !speakable.has(form) ? 'The round has the answer to everybody.' : '',
    ].filter((each) => each !== '');
    return lines.map((each) => html`<p class="small soft asked-beside">${each}</p>`);
  }

  private forms(now: AnswerForm | undefined) {
    return html`<div class="asked-forms" role="group" aria-label="Form of the answer">${answerForms.map(
      (form) =>
        html`<button type="button" class="quiet" aria-pressed=${form === now} @click=${() => this.choose(form)}>${formWords[form]}</button>`,
    )}</div>`;
  }

  protected override render() {
    const { answered, shownForm: now, asked, question } = this;
    if (answered === undefined) return html`<p class="small soft">Working it out …</p>`;
    const label = now ? formWords[now] : 'In your own words';
    const hasLeft = asked.done === 0 && (asked.sent ?? []).includes(question.text);
    return html`<div class="asked-answer">
      ${
        answered === 'none'
          ? html`<p class="small soft">${this.near()} ${label}:</p>`
          : this.forms(now)
      }
      <textarea rows="3" aria-label="Answer: ${label}" .value=${live(this.draft?.of === this.whole ? this.draft.text : this.text)}
        @input=${this.typed} @change=${this.worded}></textarea>
      ${this.beside()}
      <div class="acts"><button type="button" @click=${this.copy}>Copy</button> ${this.speak()} ${this.cases()}
        <span class="small soft" role="status">${this.said}${
          hasLeft
            ? html` This question is answered; the message is done once all of its are.`
            : nothing
        }</span></div>
    </div>`;
  }
}

customElements.define('part-answer', PartAnswer);
