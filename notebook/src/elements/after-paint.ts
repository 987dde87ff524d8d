/** Does something once what was drawn just now has been painted. */
export function afterPaint(then: () => void): void {
  requestAnimationFrame(() => {
    setTimeout(then);
  });
}
