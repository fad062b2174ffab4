const watched = new WeakSet<Element>();

/**
 * A box that is narrower than its grid is a named place of its own, so that arrows scroll it sideways; one that holds all
 * of its grid is none, and no stop for Tab.
 */
export function namedWhereItScrolls(box: Element | undefined): void {
  const inside = box?.firstElementChild;
  if (!box || !inside || watched.has(box)) return;
  watched.add(box);
  // Measured when a size changed and never while drawing: asking sooner would lay the page out twice.
  const sizes = new ResizeObserver(() => {
    if (!box.isConnected) sizes.disconnect();
    else name(box, box.scrollWidth > box.clientWidth + 1);
  });
  sizes.observe(box);
  sizes.observe(inside);
}

function name(box: Element, scrolls: boolean): void {
  if (!scrolls) {
    for (const one of ["role", "aria-label", "tabindex"]) box.removeAttribute(one);
    return;
  }
  box.setAttribute("role", "region");
  box.setAttribute("aria-label", "Lines and cases, more to the side");
  box.setAttribute("tabindex", "0");
}
