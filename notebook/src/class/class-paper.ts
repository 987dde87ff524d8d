import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { type GroupCase, surenesses } from '../state/group';
import type { Lesson } from '../state/lesson';
import './class-paper.css';
import { answerRead } from './case-read';
import { titleAbove } from './case-title';
import { askedUnit, leftOpen, type Question } from './predict';
import { type Walked, walkedCase } from './record';
import type { Sheets } from './sheets-wanted';
import { onPaper, putRight } from './task-read';
import { sumsOnKey } from './wall-sums';

/** A lesson on paper, each case whole, and as many on a sheet as fit: one for each learner to write on, and what came out with the trainer's notes. */
export class ClassPaper extends PlainElement {
  static override properties = {
    lesson: { attribute: false },
    cases: { attribute: false },
    sheets: { attribute: false },
    learners: { attribute: false },
    system: { attribute: false },
  };
  declare lesson: Pick<Lesson, 'name' | 'items'>;
  declare cases: readonly GroupCase[];
  declare sheets: Sheets;
  /** Whose worksheets; none: one set, with a line for the name. */
  declare learners: readonly string[];
  declare system: UnitSystem;

  private guess(question: Question) {
    const box = (word: string) => html`<span class="box">☐ ${word}</span> `;
    const unit = question.kind === 'number' ? askedUnit(question, this.system) : '';
    return html`<div class="write">
      <p><strong>I say:</strong> ${
        question.kind === 'word'
          ? question.words.map(box)
          : question.kind === 'several'
            ? html`<span class="line"></span> <span class="line"></span>${question.verdict ? html` The verdict: ${question.verdict.words.map(box)}` : nothing}`
            : html`<span class="line"></span> ${unit} ${box(leftOpen)}`
      }</p>
      <p><strong>I am</strong> ${surenesses.map((each) => box(each === 'a guess' ? 'guessing' : each))}</p>
      <p><strong>Because</strong></p>
      <div class="rule"></div><div class="rule"></div><div class="rule"></div>
      <p><strong>Afterward, what I had not seen</strong></p>
      <div class="rule"></div><div class="rule"></div>
    </div>`;
  }

  private sheet(walked: Walked, at: number, isKey: boolean, learner: string) {
    const { lesson, system } = this;
    const item = lesson.items[at];
    return html`<section class="one">
      <p class="small">${lesson.name || 'Lesson'} · case ${at + 1} of ${this.cases.length}${item ? html` · ${item.minutes} min` : nothing}
        ${isKey ? html` · key` : html`<span class="who">Name ${learner ? html`<strong>${learner}</strong>` : html`<span class="line"></span>`}</span>`}</p>
      <h1>${titleAbove({ exercise: walked.task.kind, title: walked.doc.front.title }, at + 1, isKey)}</h1>
      ${onPaper(walked, system, isKey)}
      ${
        isKey
          ? html`${putRight(walked)}${answerRead(walked, system)}${sumsOnKey(walked, system)}
            ${item?.note ? html`<h3>What I want to say</h3><p class="note">${item.note}</p>` : nothing}`
          : this.guess(walked.question)
      }
    </section>`;
  }

  private set(isKey: boolean, learner = '') {
    return html`<div class="set">${this.cases.map((each, at) => {
      const walked = walkedCase(each);
      return walked ? this.sheet(walked, at, isKey, learner) : nothing;
    })}</div>`;
  }

  protected override render() {
    const { sheets, learners } = this;
    const each = learners.length === 0 ? [''] : learners;
    return html`${sheets === 'key' ? nothing : each.map((learner) => this.set(false, learner))}
      ${sheets === 'worksheets' ? nothing : this.set(true)}`;
  }
}

customElements.define('class-paper', ClassPaper);
