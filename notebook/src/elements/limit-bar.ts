import { nothing, type SVGTemplateResult, svg } from 'lit';
import { type Bar, drawnTo } from '../state/bar';

const width = 250;
const height = 16;

/** A range that may or may not be used: slanted strokes, so that black and white print tells it too. */
function strokes(from: number, to: number): string {
  const step = 5;
  const count = Math.max(1, Math.floor((to - from) / step));
  return Array.from({ length: count }, (_, i) => {
    const x = from + i * step;
    return `M${x} ${height - 3}l${Math.min(step, to - x)} ${6 - height}`;
  }).join('');
}

/**
 * One limit, the same on screen and on paper: from zero to the line is the limit; the empty part is
 * lighter; what is over goes past the line; a dashed notch is the margin kept below it.
 *
 *     ░░░░░░░▓▓▓▓▓▓▓▓▓▓▓▓▓////┆  ┃
 *     empty  loaded       may be  limit
 *
 * @param size this limit as a share of the largest that stands beside it, so that all are on one scale
 */
export function limitBar({ empty, used, careFrom }: Bar, size = 1): SVGTemplateResult {
  const along = (share: number): number => ((share * size) / drawnTo) * width;
  const block = (name: string, from: number, to: number) =>
    to > from
      ? svg`<rect class=${name} x=${along(from)} y="3" width=${along(to) - along(from)} height=${height - 6} />`
      : nothing;
  const line = along(1);
  return svg`<svg class="bar" viewBox="0 0 ${width} ${height}" preserveAspectRatio="none" aria-hidden="true">
    <rect class="ground" x="0" y="3" width=${line} height=${height - 6} />
    ${block('bare', 0, empty)}
    ${used ? block('loaded', empty, Math.min(1, used.from)) : nothing}
    ${used ? block('over', Math.max(1, empty), used.from) : nothing}
    ${used && used.to > used.from ? svg`<path class="may-be" d=${strokes(along(used.from), along(used.to))} /><rect class="may-be" x=${along(used.from)} y="3" width=${along(used.to) - along(used.from)} height=${height - 6} />` : nothing}
    ${used ? nothing : svg`<rect class="untold" x="0.5" y="3.5" width=${line - 1} height=${height - 7} />`}
    ${careFrom === undefined ? nothing : svg`<path class="notch" d="M${along(careFrom)} 1V${height - 1}" />`}
    <path class="line" d="M${line} 0V${height}" />
  </svg>`;
}
