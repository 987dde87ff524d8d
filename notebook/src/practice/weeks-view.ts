import { html, nothing } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { whyNotKept } from '../state/shelf';
import { allDone } from './all-done';
import { exerciseWords } from './exercise-words';
import { type Mistake, mistakes } from './mistakes';
import './practice.css';
import { comingBack, type Done, type Due, sumsOf } from './weeks';

const isShown = (mistake: string): mistake is Mistake => Object.hasOwn(mistakes, mistake);
const all = Object.keys(mistakes).filter(isShown);
const dayOf = (at: number): string => new Date(at).toISOString().slice(0, 10);

/** Who falls for what, over all classes and all practice on this device, and what comes back when. */
export class WeeksView extends PlainElement {
  static override properties = { done: { state: true }, told: { state: true } };
  declare done: readonly Done[] | undefined;
  declare told: string;

  constructor() {
    super();
    this.told = '';
  }

  override connectedCallback(): void {
    super.connectedCallback();
    void this.look();
  }

  private async look(): Promise<void> {
    try {
      this.done = await allDone();
    } catch (problem) {
      this.done = [];
      this.told = whyNotKept(problem);
    }
  }

  private sums(done: readonly Done[]) {
    return html`<div class="tally" tabindex="0" role="group" aria-label="Mistakes by learner">
      <table>
        <thead><tr><th scope="col">Learner</th><th scope="col">Met</th><th scope="col">Wrong and certain</th>${all.map((each) => html`<th scope="col">${mistakes[each]}</th>`)}</tr></thead>
        <tbody>${sumsOf(done).map(
          ({ learner, met, of, misled, mistakes: made }) =>
            html`<tr><th scope="row">${learner}</th><td class="num">${met} of ${of}</td><td class="num">${misled === 0 ? '–' : `${misled} of ${of}`}</td>${all.map((each) => html`<td class="num">${made[each] ?? '–'}</td>`)}</tr>`,
        )}</tbody>
      </table>
    </div>`;
  }

  private due({ learner, topic, name, title, exercise, due }: Due, now: number) {
    const to = ['practice', learner, exercise, topic, name].map(encodeURIComponent).join('/');
    return html`<li><span>${learner}: ${title} <span class="from">${exerciseWords[exercise]} · ${due <= now ? 'today' : `from ${dayOf(due)}`}</span></span>
      <span class="acts"><a href=${`#/class/${to}`} aria-label=${`Practice: ${title}, ${learner}`}>Practice, with fresh figures</a></span></li>`;
  }

  protected override render() {
    const { done, told } = this;
    if (!done)
      return html`<h1>Over weeks</h1><p class="soft">Looking through classes and practice …</p>`;
    const back = comingBack(done);
    const now = Date.now();
    return html`<h1>Over weeks</h1>
      <p><a href="#/class">Class</a> · <a href="#/class/practice">Practice</a> · All this stays on this device.</p>
      ${told ? html`<p class="notice" role="alert">${told}</p>` : nothing}
      ${
        done.length === 0
          ? html`<p>Nobody has predicted or practiced anything here yet. After a class, or after practice under a name, this shows who falls for what.</p>`
          : html`<h2>Who falls for what</h2>${this.sums(done)}
            <h2>What comes back</h2>
            <p class="small soft">What was missed comes back the next day, once met after three days, then after a week; met three times, it stays away.</p>
            ${back.length === 0 ? html`<p>Nothing: whatever was missed has been met since.</p>` : html`<ul class="cases">${back.map((each) => this.due(each, now))}</ul>`}`
      }`;
  }
}

customElements.define('weeks-view', WeeksView);
