import type { ReadMessage } from '@tarebook/record';
import { html, nothing } from 'lit';
import { notesListed } from '../cases/rows';
import { topicTitle } from '../cases/topics';
import { PlainElement } from '../elements/plain-element';
import type { Asked } from '../state/questions';
import { seenOf, type Waiting } from './see';

/** More questions than these are counted, and not written out. */
const mostWritten = 12;
/** So many months fit beside each other. */
const mostMonths = 6;

const month = new Intl.DateTimeFormat('en-US', { month: 'short', year: 'numeric' });
const monthSaid = (each: string): string => month.format(new Date(`${each}-15T12:00:00`));

function aboutSaid(about: string): string {
  if (about === 'none') return 'No rules of ours';
  const name = /^note\/(.+)$/.exec(about)?.[1];
  if (name === undefined) return topicTitle(about);
  return notesListed.find((each) => each.name === name)?.title ?? name;
}

/** What all messages together say. */
export class SeeView extends PlainElement {
  static override properties = {
    messages: { attribute: false },
    readings: { attribute: false },
    near: { attribute: false },
  };
  declare messages: readonly Asked[];
  declare readings: ReadonlyMap<string, ReadMessage>;
  /** Whether what is filed near to each question was looked for. */
  declare near: boolean;

  private questions(all: readonly Waiting[]) {
    const more = all.length - mostWritten;
    return html`<ul class="small">${all
      .slice(0, mostWritten)
      .map(({ question }) => html`<li>${question.slice(0, 200)}</li>`)}
      ${more > 0 ? html`<li class="soft">and ${more.toLocaleString('en-US')} more</li>` : nothing}</ul>`;
  }

  protected override render() {
    const { messages, readings } = this;
    const { months, topics, unfiled, waiting } = seenOf(messages, readings);
    if (topics.length === 0) {
      return html`<p class="soft">${messages.length === 0 ? 'Nothing was asked yet; take messages in under “What was asked”.' : 'The messages are still being read …'}</p>`;
    }
    const shown = months.slice(-mostMonths);
    return html`<h2>Asked most</h2>
      <div class="see-scroll" tabindex="0" role="region" aria-label="Asked most, by month"><table class="see-table">
        <thead><tr><th scope="col">About</th><th scope="col" class="num">In all</th>
          ${shown.map((each) => html`<th scope="col" class="num">${monthSaid(each)}</th>`)}</tr></thead>
        <tbody>${topics.map(
          (
            each,
          ) => html`<tr><th scope="row">${aboutSaid(each.about)}</th><td class="num">${each.count}</td>
            ${shown.map((one) => html`<td class="num">${each.months[one] ?? ''}</td>`)}</tr>`,
        )}</tbody></table></div>
      <h2>Open, by what they wait for</h2>
      ${
        waiting.length === 0
          ? html`<p class="soft">Nothing is open.</p>`
          : waiting.map(
              ({ what, questions }) =>
                html`<details><summary>${questions.length} ${questions.length === 1 ? 'waits' : 'wait'} for: ${what}</summary>${this.questions(questions)}</details>`,
            )
      }
      <h2>Nothing is filed near to these</h2>
      ${
        !this.near
          ? html`<p class="soft">It is still being looked for …</p>`
          : unfiled.length === 0
            ? html`<p class="soft">Near to each question stands a case or a note.</p>`
            : this.questions(unfiled)
      }`;
  }
}

customElements.define('see-view', SeeView);
