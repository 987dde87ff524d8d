import { html, nothing } from 'lit';
import { caseAddress } from '../state/address';
import type { Row } from './rows';
import { topicTitle } from './topics';
import './case-verdict';

/** “Nov 28, 5:20 PM” */
const touched = (at: number): string =>
  new Date(at).toLocaleString('en-US', { dateStyle: 'medium', timeStyle: 'short' });

/** A case of a list: what it is called, how it came out, and what is known of it. */
export function caseRow(row: Row, acts: unknown = nothing, withTopic = false) {
  const { topic, name, title, asked, level, own, text, shipped } = row;
  const said = [
    withTopic ? topicTitle(topic) : '',
    level,
    asked ? `asked: ${asked}` : '',
    own === 'changed' ? 'changed by you' : own === 'mine' ? 'yours' : '',
    own === 'filed' ? '' : touched(row.at),
  ];
  return html`<li>
    <a href=${caseAddress(topic, name)}>${title}</a>
    <case-verdict .topic=${topic} .name=${name} .text=${text} .shipped=${shipped}></case-verdict>
    <span class="from">${said.filter((each) => each !== '').join(' · ')}</span>
    ${acts}
  </li>`;
}
