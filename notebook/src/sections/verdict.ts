import { html } from 'lit';
import { levelOf } from '../elements/marks';
import '../elements/verdict-note';
import { verdictStrip } from '../elements/verdict-strip';
import { whenAnswered } from './case-view';

/** The verdict in a line that stays in sight. */
export const strip = whenAnswered(({ answer, topic, system }) =>
  verdictStrip(answer, topic, system, () => {
    document.querySelector<HTMLElement>('.verdict')?.focus();
  }),
);

/** The verdict in one sentence, with the limit that runs out first, and what it was as filed. */
export const verdict = whenAnswered(({ answer, topic, current, filed, system }) => {
  const before = filed?.answer;
  const moved = before && before.sentence !== answer.sentence ? before : undefined;
  return html`<verdict-note
    .answer=${answer}
    .level=${levelOf(topic.outcomes, answer.outcome)}
    .current=${current}
    .was=${moved}
    .system=${system}
  ></verdict-note>`;
});
