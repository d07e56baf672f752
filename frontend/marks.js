/** The shop's marks as inline drawings: told apart by outline alone. Used as <shop-mark kind="…">. */
const SHAPES = {
  // round with a tick: done, accepted, in order
  signed: '<circle cx="24" cy="24" r="21" fill="currentColor"/>'
    + '<path d="M13 25l8 8 15-17" fill="none" stroke="var(--mark-hole, #fffdf7)" stroke-width="6"/>',
  // diamond with a cross: refused, not in order
  refused: '<path d="M24 1L47 24 24 47 1 24z" fill="currentColor"/>'
    + '<path d="M16 16l16 16M32 16L16 32" stroke="var(--mark-hole, #fffdf7)" stroke-width="6"/>',
  // arrow head: this one now
  now: '<path d="M10 4l30 20-30 20z" fill="currentColor"/>',
  // empty square: still to come
  'to-come': '<rect x="8" y="8" width="32" height="32" fill="none" stroke="currentColor" stroke-width="5"/>',
  // circling arrow: superseded by rework
  superseded: '<path d="M38 30A16 16 0 1 1 36 14" fill="none" stroke="currentColor" stroke-width="6"/>'
    + '<path d="M28 16h16V0z" fill="currentColor"/>',
  // square with a bar: stopped
  stopped: '<rect x="5" y="5" width="38" height="38" fill="currentColor"/>'
    + '<path d="M13 24h22" stroke="var(--mark-hole, #fffdf7)" stroke-width="7"/>',
  // half-filled stamp: waits for an inspector
  stamp: '<path d="M18 4h12v14l12 10v8H6v-8l12-10z" fill="currentColor"/><path d="M6 44h36" stroke="currentColor"'
    + ' stroke-width="5"/>',
  // triangle: caution
  caution: '<path d="M24 3L46 44H2z" fill="none" stroke="currentColor" stroke-width="5" stroke-linejoin="round"/>'
    + '<path d="M24 17v13" stroke="currentColor" stroke-width="5"/><circle cx="24" cy="37" r="3" fill="currentColor"/>',
  // an hourglass: hot, has to stay where it is
  cooling: '<path d="M8 4h32M8 44h32" stroke="currentColor" stroke-width="6"/>'
    + '<path d="M12 6h24v6L24 24 12 12zM24 24l12 12v6H12v-6z" fill="currentColor"/>',
  // a ring half filled: done, not looked at yet
  half: '<circle cx="24" cy="24" r="19" fill="none" stroke="currentColor" stroke-width="5"/>'
    + '<path d="M24 5a19 19 0 0 1 0 38z" fill="currentColor"/>',
  // corner marks round a line of bars: scan
  scan: '<path d="M3 14V3h11M34 3h11v11M45 34v11H34M14 45H3V34" fill="none" stroke="currentColor" stroke-width="5"/>'
    + '<path d="M13 14v20M20 14v20M28 14v20M36 14v20" stroke="currentColor" stroke-width="4"/>',
  // two joined rings: linked; two parted rings with a gap: not linked
  linked: '<circle cx="16" cy="24" r="11" fill="none" stroke="currentColor" stroke-width="6"/>'
    + '<circle cx="32" cy="24" r="11" fill="none" stroke="currentColor" stroke-width="6"/>',
  parted: '<circle cx="11" cy="24" r="8" fill="none" stroke="currentColor" stroke-width="5"/>'
    + '<circle cx="37" cy="24" r="8" fill="none" stroke="currentColor" stroke-width="5"/>'
    + '<path d="M24 4v40" stroke="currentColor" stroke-width="5" stroke-dasharray="7 5"/>',
};

/** The drawing of `kind` as SVG text, hidden from screen readers: the word beside it speaks. */
export function mark(kind) {
  return `<svg viewBox="0 0 48 48" aria-hidden="true" focusable="false">${SHAPES[kind]}</svg>`;
}

class ShopMark extends HTMLElement {
  static observedAttributes = ['kind'];

  attributeChangedCallback() {
    const kind = this.getAttribute('kind');
    this.innerHTML = kind in SHAPES ? mark(kind) : '';
  }
}

customElements.define('shop-mark', ShopMark);
