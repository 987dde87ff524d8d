import { html, noChange, nothing } from 'lit';
import '../counter/case-ticket';
import { head, stray } from '../counter/head';
import { firstKnown, known } from '../counter/known';
import { type AnsweredView, type CaseView, openOf } from '../sections/case-view';
import { shared } from '../sections/leave';
import { onceAsked, onceDrawn } from '../sections/once-shown';

/** What was counted in by name; it comes once the verdict is drawn, as few cases have any. */
let countedIn: (doc: CaseView['doc']) => string = () => '';
/** Told to a page that was drawn without it. */
export const loadsHere = 'loads-here';
const loads = onceDrawn(async () => {
  ({ countedIn } = await import('../counter/loads-counted'));
  document.dispatchEvent(new Event(loadsHere));
});

const behind = onceDrawn(() => import('../counter/case-behind'));
const readerFace = onceAsked(() => import('../reader/reader-face'));

/** Only a vehicle, a trailer or a load can be exchanged for another. */
const isRig = ({ topic }: CaseView): boolean =>
  Object.keys(topic?.facts ?? {}).some((id) => /^(vehicle|trailer)\./.test(id));

function ticketPart(view: CaseView) {
  const { ticket, doc, topic, answer, said } = view;
  if (!ticket || !topic) return nothing;
  const about = `${topic.title}${answer ? ` · as of ${answer.asOf}` : ''}`;
  return html`<case-ticket .ticket=${ticket} .of=${openOf(topic, view)} .about=${about} .counted=${countedIn(doc)}
    .house=${answer?.house ? `Reckoned with the numbers of ${answer.house.name}.` : ''} .said=${said}></case-ticket>`;
}

/** What somebody does on the counter's face that is not in the view. */
export type CounterActs = {
  readonly wentOn: (event: Event) => void;
  readonly turn: () => void;
  readonly besides: () => void;
};

/**
 * How much is drawn. A case that is opened grows, a frame each, so that the verdict is painted before
 * all else and no step is long: its head with the ticket, its first facts, all facts, all. Of an edit
 * it is the ticket alone, and then all.
 */
export type Shows = 'head' | 'first' | 'facts' | 'ticket' | 'all';

function knownPart(view: CaseView, shows: Shows) {
  if (shows === 'ticket') return noChange;
  const facts = shows === 'head' ? nothing : shows === 'first' ? firstKnown(view) : known(view);
  return [head(view), shared(view), facts];
}

function foldsPart(view: CaseView, shows: Shows, { turn, besides }: CounterActs) {
  if (shows !== 'all') return noChange;
  return html`<case-behind .view=${view}></case-behind>
    <button type="button" class="quiet noprint" @click=${turn}>As the owner reads it</button>
    ${isRig(view) ? html`<button type="button" class="quiet noprint" @click=${besides}>Side by side</button>` : nothing}`;
}

/**
 * The counter's face: facts on one side, the ticket on the other, and behind it all it stands on.
 * What is not drawn anew stays as it was drawn last.
 */
export function counterFace(view: CaseView, shows: Shows, acts: CounterActs) {
  if (shows !== 'head') {
    behind();
    loads();
  }
  return html`<div class="known" @went-on=${acts.wentOn}>${knownPart(view, shows)}</div>
    <div class="stub">
      ${ticketPart(view)}
      <div class="folds">${foldsPart(view, shows, acts)}</div>
    </div>`;
}

/** The owner's face, which links open: what the verdict is, why, and what to do next. */
export function ownersFace(view: AnsweredView, turn: () => void) {
  readerFace();
  return html`<div class="read">${stray(view.doc)}${shared(view)}<reader-face .view=${view} @face-turned=${turn}></reader-face></div>`;
}
