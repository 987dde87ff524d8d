import { topics } from '@tarebook/rules';
import { html } from 'lit';

const order = Object.keys(topics);
const rank = (id: string): number => (order.includes(id) ? order.indexOf(id) : order.length);

/** Topics in the order in which the rules list them, others last. */
export const byTopic = (a: { readonly topic: string }, b: { readonly topic: string }): number =>
  rank(a.topic) - rank(b.topic) || a.topic.localeCompare(b.topic, 'en');

/** Narrows a list to one topic, or to none: '' stands for all. */
export function topicChoice(
  chosen: string,
  list: readonly { readonly topic: string }[],
  choose: (topic: string) => void,
) {
  const named = [...new Set(list.toSorted(byTopic).map(({ topic }) => topic))];
  const change = ({ target }: Event): void => {
    if (target instanceof HTMLSelectElement) choose(target.value);
  };
  const counted = (id: string): string => `(${list.filter(({ topic }) => topic === id).length})`;
  return html`<label>About<br /><select .value=${chosen} @change=${change}>
    <option value="" ?selected=${chosen === ''}>everything (${list.length})</option>
    ${named.map(
      (id) =>
        html`<option value=${id} ?selected=${chosen === id}>${topics[id]?.title ?? id} ${counted(id)}</option>`,
    )}
  </select></label>`;
}
