import { html } from 'lit';
import type { Part } from './case-rest';
import { type Section, whenAnswered } from './case-view';
import { onceShown } from './once-shown';

const read = onceShown(() => import('./case-rest'));

const later = (part: Part): Section =>
  whenAnswered((view) => {
    read();
    return html`<case-rest .view=${view} .which=${part}></case-rest>`;
  });

/** The reason, the working, and what would change the verdict. */
export const reasoning = later('reasoning');

/** Every source that the answer stands on. */
export const sources = later('sources');
