const SCROLLS = ".formula, .numbers, .stations, .registers .wide";

/**
 * Formulas and grids that are wider than their place scroll in it; those, and only those, can then be
 * reached by Tab, so that the arrow keys scroll them.
 */
export class Wide {
  #asked = false;

  /** @param {Element} body */
  constructor(body) {
    this.body = body;
    new ResizeObserver(() => this.look()).observe(body);
  }

  /** Looks again, once the page is at rest. */
  look() {
    if (this.#asked) return;
    this.#asked = true;
    const later = "requestIdleCallback" in window ? (act) => requestIdleCallback(act, { timeout: 500 }) : (act) => setTimeout(act, 200);
    later(() => {
      this.#asked = false;
      const all = [...this.body.querySelectorAll(SCROLLS)];
      // all are measured before any is written, so that the page is laid out once
      const wide = all.map((one) => one.scrollWidth > one.clientWidth + 1);
      all.forEach((one, index) => {
        if (wide[index]) one.tabIndex = 0;
        else if (one.tabIndex === 0) one.removeAttribute("tabindex");
      });
    });
  }
}
