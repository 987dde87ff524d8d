import { html } from 'lit';
import '../drawings/case-figures';
import { whenAnswered } from './case-view';

/** The case as a picture, where its topic has one. */
export const drawing = whenAnswered(
  ({ doc, answer, system }) =>
    html`<case-figures .drawn=${{ doc, answer }} .system=${system}></case-figures>`,
);
