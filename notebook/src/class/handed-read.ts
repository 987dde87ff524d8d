import { html, nothing, type TemplateResult } from 'lit';
import '../elements/qr-code';
import { pageAddress } from '../elements/share-case';

/** What a learner said, and the code that carries it to the trainer. */
export type Handed = { readonly code: string; readonly said: string; readonly why: string };

/**
 * What stands on a learner's phone once something was said.
 *
 * @param id of the class
 * @param isSent whether it went by itself, and need not be read out
 * @param mistyped absent once nothing can be said anew
 */
export function handedRead(
  { code, said, why }: Handed,
  id: string,
  isSent: boolean,
  mistyped: (() => void) | undefined,
): TemplateResult {
  const again = mistyped
    ? html`<div class="acts"><button @click=${mistyped}>I mistyped</button></div>`
    : nothing;
  if (isSent) {
    return html`<p class="handed" tabindex="-1">You say <strong>${said}</strong>.</p>
      <p class="small soft">What came out is on the wall, once the trainer opens it. The next case comes here by itself.</p>
      ${again}`;
  }
  const grouped = code.replace(/(.{3})(?=.)/g, '$1 ');
  const back = `${pageAddress()}#/class/guess/${id}/${code}/${encodeURIComponent(why)}`;
  return html`<p class="handed" tabindex="-1">You say <strong class="num">${said}</strong>. Read this code out, or let the trainer’s device scan it:</p>
    <p class="read-out num" aria-label=${[...code].join(' ')}>${grouped}</p>
    ${why ? html`<p class="small">The code that is read out has no room for your reason; say it, too: “${why}”</p>` : nothing}
    <qr-code .text=${back} .label=${'Code that carries the guess to the trainer'}></qr-code>
    ${again}`;
}
