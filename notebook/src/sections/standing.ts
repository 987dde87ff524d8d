import { html } from 'lit';
import { cited } from '../elements/cited';
import '../elements/working-steps';
import { whenAnswered } from './case-view';

/** The working, opened step by step. */
export const working = whenAnswered(
  ({ answer, topic, system }) => html`
    <h2>The working</h2>
    <working-steps .trace=${answer.trace} .topic=${topic} .system=${system}></working-steps>`,
);

/** Every source that the answer stands on, once, and the rules' version and day. */
export const sources = whenAnswered(({ answer }) => {
  const all = Object.values(answer.trace.steps).flatMap(({ source }) =>
    source ? [`${source.class.replace('-', ' ')}: ${cited(source)}`] : [],
  );
  return html`
    <h2>Sources</h2>
    <ul class="small soft">${[...new Set(all)].toSorted().map((each) => html`<li>${each}</li>`)}</ul>
    <p class="small soft">Rules ${answer.topic} ${answer.rules}, as of ${answer.asOf}.</p>`;
});
