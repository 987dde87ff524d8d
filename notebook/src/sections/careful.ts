import { html, nothing } from 'lit';
import { whenAnswered } from './case-view';

/** What nobody said and the rules therefore took to be so. */
export const taken = whenAnswered(({ answer }) =>
  answer.assumed.length === 0
    ? nothing
    : html`
      <h2>Taken for granted</h2>
      <ul>${answer.assumed.map(({ says }) => html`<li>${says}</li>`)}</ul>`,
);

export const careful = whenAnswered(
  ({ answer }) => html`
    <h2>What to be careful about</h2>
    <ul>${answer.cautions.map((each) => html`<li>${each}</li>`)}</ul>`,
);
