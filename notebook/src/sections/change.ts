import { html, nothing } from 'lit';
import type { RemedyTried } from '../elements/change-list';
import '../elements/change-list';
import { withRemedy } from '../change/apply';
import { levelOf } from '../elements/marks';
import { whenAnswered } from './case-view';

/** What would change the verdict; a verdict that is all right has nothing to change. */
export const whatWouldChange = whenAnswered((view) => {
  const { doc, topic, answer, current, system } = view;
  const level = levelOf(topic.outcomes, answer.outcome);
  if (level === 'ok' || level === 'unknown') return nothing;
  const tried = ({ detail }: RemedyTried) =>
    view.edit((now) => withRemedy(now, detail.remedy), 'remedy');
  return html`<h2>What would change it</h2>
    <change-list   .doc=${current ? doc : undefined} .system=${system} @remedy-tried=${tried}></change-list>`;
});
