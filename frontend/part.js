/** What the parts share: a small builder of elements, text escaped by construction, and redrawing once per change. */

/** Makes `<tag class="names">` holding `children` (elements or text). */
export function make(tag, names = '', ...children) {
  const element = document.createElement(tag);
  if (names) {
    element.className = names;
  }
  element.append(...children);
  return element;
}

/** A button that answers one touch with `press`. */
export function button(text, names, press) {
  const made = make('button', `action ${names}`.trim(), text);
  made.type = 'button';
  made.addEventListener('click', press);
  return made;
}

/** An element drawn from its attributes; the server sets several in a row, so it is redrawn once afterwards. */
export class Part extends HTMLElement {
  #due = false;

  connectedCallback() {
    this.redraw();
  }

  attributeChangedCallback() {
    this.redraw();
  }

  /** Asks for one {@link draw} after the current changes. */
  redraw() {
    if (this.#due) {
      return;
    }
    this.#due = true;
    queueMicrotask(() => {
      this.#due = false;
      if (this.isConnected) {
        this.draw();
      }
    });
  }

  /** The text of an attribute, empty where it is missing. */
  text(name) {
    return this.getAttribute(name) ?? '';
  }

  /** The number in an attribute, `otherwise` where it is missing. */
  number(name, otherwise = 0) {
    return this.hasAttribute(name) ? Number(this.getAttribute(name)) : otherwise;
  }

  /** Raises `name` to the server with `detail`. */
  raise(name, detail = {}) {
    this.dispatchEvent(new CustomEvent(name, { detail }));
  }
}
