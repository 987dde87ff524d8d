import { type Catalogue, ruleInWords, type Topic } from '@tarebook/rules/engine';
import { wrapped } from './columns';

/** “from 2025”, “until 2024”, “2024 to 2026”; nothing, when it is so in every year. */
function span({ years }: Catalogue, from: string, to: string | undefined): string {
  const [isFirst, isLast] = [from === years[0], to === undefined || to === years.at(-1)];
  if (isFirst && isLast) return '';
  if (isLast) return ` from ${from}`;
  return isFirst ? ` until ${to}` : ` ${from} to ${to}`;
}

function listText(catalogue: Catalogue, list: string): string {
  const models = Object.values(catalogue.models)
    .filter(({ offers }) => offers === list)
    .map(({ label, sold: [from, to] }) => `${label}${span(catalogue, from, to)}`);
  const offers = catalogue.offers[list] ?? [];
  const named = (as: 'standard' | 'optional') =>
    offers
      .filter((offer) => offer.as === as)
      .map(({ option, from, to }) => {
        const label = catalogue.options[option]?.label ?? option;
        return `${label}${span(catalogue, from, to)}`;
      })
      .join(', ');
  const lines = [`standard: ${named('standard') || 'nothing'}`, `optional: ${named('optional')}`];
  return [models.join(', '), ...lines.map((line) => `  ${line}`)]
    .map((line) => `      ${wrapped(line, '        ')}`)
    .join('\n');
}

/** What every catalogue of a topic offers, and which options need or rule out one another. */
export function catalogueText({ catalogues = {} }: Topic): string {
  return Object.values(catalogues)
    .map((catalogue) => {
      const { label, offers, rules, source } = catalogue;
      const told = rules.map(
        (rule) => `      ${wrapped(ruleInWords(catalogue, rule), '        ')}`,
      );
      return [
        `  ${label.charAt(0).toUpperCase()}${label.slice(1)} – ${source.class}: ${source.cite}`,
        ...Object.keys(offers).map((list) => listText(catalogue, list)),
        ...told,
      ].join('\n');
    })
    .join('\n');
}
