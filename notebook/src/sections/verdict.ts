import { html } from 'lit';
import { levelOf } from '../elements/marks';
import '../elements/verdict-note';
import { whenAnswered } from './case-view';

/** The verdict in one sentence, with the limit that runs out first. */
export const verdict = whenAnswered(
  ({ answer, topic, current }) =>
    html`<verdict-note .answer=${answer} .level=${levelOf(topic.outcomes, answer.outcome)} .current=${current}></verdict-note>`,
);
