import type { LimitAnswer } from '@tarebook/rules/engine';
import { nothing, type SVGTemplateResult, svg } from 'lit';

const width = 200;
const height = 14;

/** What the bar shows at the most: a tenth beyond the limit. */
const along = (share: number): number => (Math.min(1.1, Math.max(0, share)) / 1.1) * width;

/** One limit for paper: black is used, hatched may be used, a stroke at margin and rating. */
export function printedRail({ share, careAt, limit }: LimitAnswer): SVGTemplateResult {
  const known = Number.isFinite(share.lo) && Number.isFinite(share.hi);
  const [from, to] = known ? [along(share.lo), along(share.hi)] : [0, width];
  const margin =
    careAt && limit.hi > 0 && Number.isFinite(limit.hi) ? along(careAt.hi / limit.hi) : undefined;
  const strokes = known && to > from ? Array.from({ length: 60 }, (_, i) => i * 4) : [];
  return svg`<svg class="sheet-rail" viewBox="0 0 ${width} ${height}" aria-hidden="true">
    <rect x="0" y="3" width=${along(1)} height=${height - 6} fill="none" stroke="#000" />
    <rect x="0" y="3" width=${known ? from : 0} height=${height - 6} fill="#000" />
    ${strokes
      .filter((x) => x >= from && x <= to)
      .map((x) => svg`<path d="M${x} ${height - 3}l3 ${6 - height}" stroke="#000" fill="none" />`)}
    ${margin === undefined ? nothing : svg`<path d="M${margin} 0v${height}" stroke="#000" />`}
    <path d="M${along(1)} 0v${height}" stroke="#000" stroke-width="3" />
  </svg>`;
}
