import type { Page } from '@playwright/test';

/** What somebody who listens is told of one thing on a page. */
export type Named = {
  readonly role: string;
  readonly name: string;
  /** Of a heading. */
  readonly level?: number;
  /** Of a link: where it leads. */
  readonly url?: string;
  /** The named parts it stands in, the outermost first. */
  readonly within: readonly string[];
};

const controls = new Set([
  ...['button', 'link', 'textbox', 'searchbox', 'combobox', 'listbox', 'checkbox', 'radio'],
  ...['slider', 'spinbutton', 'switch', 'tab', 'menuitem', 'option', 'DisclosureTriangle'],
]);
const parts = new Set([
  ...['region', 'navigation', 'banner', 'contentinfo', 'main', 'complementary', 'form', 'search'],
  ...['group', 'radiogroup', 'dialog', 'article', 'figure', 'table', 'listitem', 'row'],
]);
const others = new Set(['heading', 'image', 'img', 'status', 'alert', 'log']);

type Told = { readonly value?: unknown } | undefined;

const said = (of: Told): string =>
  typeof of?.value === 'string' ? of.value.replace(/\s+/g, ' ').trim() : '';

/** Everything on a page that is announced by a name, in the order in which it is come to. */
export async function namesOn(page: Page): Promise<readonly Named[]> {
  const client = await page.context().newCDPSession(page);
  const { nodes } = await client.send('Accessibility.getFullAXTree');
  await client.detach();
  const byId = new Map(nodes.map((node) => [node.nodeId, node]));
  const found: Named[] = [];
  const walk = (node: (typeof nodes)[number], within: readonly string[]): void => {
    const [role, name] = [said(node.role), said(node.name)];
    const told = !node.ignored && (controls.has(role) || parts.has(role) || others.has(role));
    if (told) {
      const of = (property: string): unknown =>
        node.properties?.find((each) => each.name === property)?.value.value;
      const [level, url] = [of('level'), of('url')];
      found.push({
        ...{ role, name, within },
        ...(typeof level === 'number' && { level }),
        ...(typeof url === 'string' && { url }),
      });
    }
    const inner = told && parts.has(role) && name !== '' ? [...within, name] : within;
    for (const id of node.childIds ?? []) {
      const child = byId.get(id);
      if (child) walk(child, inner);
    }
  };
  const [root] = nodes;
  if (root) walk(root, []);
  return found;
}

const asLine = ({ role, name, within }: Named): string =>
  `${role} “${name}”${within.length > 0 ? ` in ${within.join(' › ')}` : ''}`;

export const isControl = ({ role }: Named): boolean => controls.has(role);

/** Controls and pictures that say nothing of themselves. */
export const nameless = (all: readonly Named[]): readonly string[] =>
  all
    .filter((each) => isControl(each) || each.role === 'image' || each.role === 'img')
    .filter(({ name }) => !/[\p{L}\p{N}]/u.test(name))
    .map(asLine);

/** Headings that leave a level out, and pages that begin with none or with several of the first. */
export function outOfOrder(all: readonly Named[]): readonly string[] {
  const headings = all.filter(({ role }) => role === 'heading');
  const firsts = headings.filter(({ level }) => level === 1);
  return [
    ...(firsts.length === 1 ? [] : [`${firsts.length} headings of the first level`]),
    ...headings.flatMap((each, at) => {
      const before = headings[at - 1]?.level ?? 0;
      return (each.level ?? 0) > before + 1
        ? [`“${each.name}” is of level ${each.level} after level ${before}`]
        : [];
    }),
  ];
}

/** Controls that nobody who only listens can tell from each other; links that lead to the same place are one. */
export function alike(all: readonly Named[]): readonly string[] {
  const count = new Map<string, number>();
  const links = new Set<string>();
  for (const each of all) {
    if (!isControl(each) || each.role === 'option') continue;
    if (each.url !== undefined) {
      const link = `${asLine(each)} ${each.url}`;
      if (links.has(link)) continue;
      links.add(link);
    }
    const line = asLine(each);
    count.set(line, (count.get(line) ?? 0) + 1);
  }
  return [...count].flatMap(([line, n]) => (n > 1 ? [`${n} × ${line}`] : []));
}

/** The page as it is listened to. */
export const listened = (all: readonly Named[]): string =>
  all
    .map(
      (each) => `${'  '.repeat(each.within.length)}${each.role}${each.level ?? ''}: ${each.name}`,
    )
    .join('\n');
