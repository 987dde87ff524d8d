import { html } from 'lit';
import { type AnsweredView, whenAnswered } from './case-view';

async function copy({ answer }: AnsweredView, status: Element | null): Promise<void> {
  const text = `${answer.sentence} ${answer.cautions[1] ?? ''} ${answer.cautions[0] ?? ''}`;
  const say = (words: string) => {
    if (status) status.textContent = words;
  };
  try {
    await navigator.clipboard.writeText(text);
    say('Copied, with its caution.');
  } catch {
    say('This browser does not let the page copy; mark the text and copy it yourself.');
  }
}

/** The sentence to say aloud, at a touch. */
export const say = whenAnswered(
  (view) => html`<div class="acts">
    <button @click=${(event: Event) => {
      const at = event.currentTarget;
      const status =
        at instanceof Element ? (at.parentElement?.querySelector('output') ?? null) : null;
      void copy(view, status);
    }}>Copy the sentence</button>
    <output class="small soft"></output>
  </div>`,
);
