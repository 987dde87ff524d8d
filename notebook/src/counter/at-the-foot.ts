/**
 * Tells the style sheet how much of the screen's foot the ticket takes, and how much a keyboard that
 * lies over the page: `--foot`, `--keyboard`. Ends when the returned function is called.
 */
export function standAtTheFoot(ticket: Element): () => void {
  const { style } = document.documentElement;
  const keyboard = (): void => {
    const seen = visualViewport;
    if (!seen || seen.scale > 1) return;
    const covered = Math.max(0, innerHeight - seen.height - seen.offsetTop);
    style.setProperty('--keyboard', `${Math.round(covered)}px`);
  };
  const watch = new ResizeObserver(([entry]) => {
    const height = entry?.borderBoxSize[0]?.blockSize ?? 0;
    style.setProperty('--foot', `${Math.ceil(height)}px`);
  });
  watch.observe(ticket);
  visualViewport?.addEventListener('resize', keyboard);
  visualViewport?.addEventListener('scroll', keyboard);
  return () => {
    watch.disconnect();
    visualViewport?.removeEventListener('resize', keyboard);
    visualViewport?.removeEventListener('scroll', keyboard);
    style.removeProperty('--foot');
    style.removeProperty('--keyboard');
  };
}
