import { liveValueIn } from '@tarebook/casebook';
import { html, nothing, type TemplateResult } from 'lit';
import type { Nodes, PhrasingContent, RootContent } from 'mdast';

/** What a live value in prose shows now. */
export type Live = (name: string) => string;

type Drawn = TemplateResult | string | typeof nothing;

/** Only addresses that lead somewhere in the open; prose of a case is not trusted. */
function safeAddress(url: string): string | undefined {
  return /^(https?:|mailto:|#)/i.test(url.trim()) ? url : undefined;
}

function link(url: string, inner: Drawn[]): Drawn {
  const address = safeAddress(url);
  return address
    ? html`<a href=${address} rel="noopener noreferrer nofollow">${inner}</a>`
    : html`<span>${inner}</span>`;
}

/**
 * Prose as templates, never as a string of HTML: raw HTML is shown as the text it is, images as
 * their words, and a code span that begins with = as the live value.
 */
export function prose(node: Nodes, live: Live): Drawn {
  const inner = (children: readonly (RootContent | PhrasingContent)[]): Drawn[] =>
    children.map((child) => prose(child, live));
  switch (node.type) {
    case 'text':
      return node.value;
    case 'inlineCode': {
      const name = liveValueIn(node);
      return name === undefined
        ? html`<code>${node.value}</code>`
        : html`<strong class="num" title=${name}>${live(name)}</strong>`;
    }
    case 'paragraph':
      return html`<p>${inner(node.children)}</p>`;
    case 'heading':
      return html`<h3>${inner(node.children)}</h3>`;
    case 'emphasis':
      return html`<em>${inner(node.children)}</em>`;
    case 'strong':
      return html`<strong>${inner(node.children)}</strong>`;
    case 'delete':
      return html`<del>${inner(node.children)}</del>`;
    case 'break':
      return html`<br />`;
    case 'thematicBreak':
      return html`<hr />`;
    case 'blockquote':
      return html`<blockquote>${inner(node.children)}</blockquote>`;
    case 'list':
      return node.ordered
        ? html`<ol>${inner(node.children)}</ol>`
        : html`<ul>${inner(node.children)}</ul>`;
    case 'listItem':
      return html`<li>${inner(node.children)}</li>`;
    case 'code':
      return html`<pre><code>${node.value}</code></pre>`;
    case 'link':
      return link(node.url, inner(node.children));
    case 'image':
      return node.alt ?? '';
    case 'html':
      return html`<code>${node.value}</code>`;
    case 'table': {
      const [head, ...rows] = node.children;
      return html`<table>
        <thead><tr>${head?.children.map((cell) => html`<th scope="col">${inner(cell.children)}</th>`)}</tr></thead>
        <tbody>${rows.map((row) => html`<tr>${row.children.map((cell) => html`<td>${inner(cell.children)}</td>`)}</tr>`)}</tbody>
      </table>`;
    }
    case 'textDirective':
      return html`:${node.name}${inner(node.children)}`;
    default:
      return 'children' in node ? html`${inner(node.children)}` : nothing;
  }
}
