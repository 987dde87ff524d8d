import { html } from 'lit';
import { mark } from '../elements/marks';
import type { Commitment } from '../state/group';
import { SaidMarked } from './class-case-events';
import { type SeveralQuestion, severalSaid, wordsSaid } from './several';

/** What was heard in a learner's sentence, part by part; one tap says otherwise of one of them. */
export function saidMarks({ learner, said }: Commitment, { words }: SeveralQuestion) {
  const heard = wordsSaid(said);
  const turn = (word: string) => (event: Event) => {
    const kept = words.filter((each) => heard.includes(each) !== (each === word));
    event.target?.dispatchEvent(new SaidMarked(learner, severalSaid(kept)));
  };
  return html`<div class="said-marks" role="group" aria-label=${`What ${learner} said`}>${words.map(
    (word) => {
      const isMet = heard.includes(word);
      return html`<button type="button" aria-pressed=${isMet ? 'true' : 'false'} @click=${turn(word)}>${mark(isMet ? 'ok' : 'stop')} ${word}: ${isMet ? 'met' : 'not met'}</button>`;
    },
  )}</div>`;
}
