import type { ReadLine } from '@tarebook/record';
import type { Topic } from '@tarebook/rules/engine';
import { html, nothing } from 'lit';
import { topicsListed } from '../cases/topics';
import type { Draft } from './draft';
import { markKey } from './line-case';

/** What the line is about: those it is likely about stand first. */
export function topicChoice(
  line: ReadLine | undefined,
  draft: Draft,
  wanted: () => void,
  chosen: (event: Event) => void,
) {
  const likely = line?.likely ?? [];
  const first = topicsListed.filter(({ id }) => likely.includes(id));
  const rest = topicsListed.filter(({ id }) => !likely.includes(id));
  const now = draft.topic === '' ? (line?.topic ?? '') : draft.topic;
  const option = ({ id, title }: (typeof topicsListed)[number]) =>
    html`<option value=${id} ?selected=${id === now}>${title}</option>`;
  return html`<label class="line-topic">About <select .value=${now} @focus=${wanted} @change=${chosen}>
    ${now === '' ? html`<option value="" selected>${draft.text.trim() === '' ? 'choose, or just type' : 'not clear yet: choose'}</option>` : nothing}
    ${first.map(option)}${rest.map(option)}
  </select></label>`;
}

/** The question before all others: what a number is that nobody said. */
export function whichNumber(
  topic: Topic,
  text: string,
  line: ReadLine,
  draft: Draft,
  choose: (key: string, fact: string) => void,
) {
  const mark = line.marks.find((each) => {
    const key = markKey(each, text);
    const isOpen = each.kind === 'open' && each.among.length > 0;
    return isOpen && draft.chosen[key] === undefined && !draft.dropped.includes(key);
  });
  if (mark?.kind !== 'open') return nothing;
  const key = markKey(mark, text);
  return html`<section class="next" aria-label="Ask next">
    <p class="next-ask">“${text.slice(mark.from, mark.to)}”: which is that?</p>
    <p class="small soft">Until it is known it counts for nothing.</p>
    <div class="which">${mark.among.map((id) => {
      const fact = topic.facts[id];
      return html`<button type="button" @click=${() => choose(key, id)}>${fact?.label ?? id}</button>`;
    })}<button type="button" @click=${() => choose(key, '')}>neither, or not known</button></div>
  </section>`;
}

/** What must be said before anything else. */
export function danger(line: ReadLine | undefined) {
  if (!line?.urgent) return nothing;
  return html`<section class="urgent level-stop" role="alert" aria-label="Urgent">
    <p><strong>Urgent. Say this first:</strong></p><p>${line.firstReply}</p></section>`;
}
