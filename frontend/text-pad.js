/**
 * <shop-text-pad label length run>: a few words on large keys of our own, in the order of the alphabet.
 *
 * Raises `entered` {value}. A keyboard that happens to be there works too while the pad has the focus.
 */
import { mayAct } from './heartbeat.js';
import { button, make, Part } from './part.js';

const KEYS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-.,/';

class ShopTextPad extends Part {
  static observedAttributes = ['run'];
  #value = '';
  #shown;

  draw() {
    if (this.text('run') === this.#shown) {
      return;
    }
    this.#shown = this.text('run');
    this.#value = '';
    const face = make('div', 'text-face', '\u00a0');
    face.setAttribute('role', 'status');
    face.setAttribute('aria-label', this.text('label'));
    const keys = make('div', 'text-keys', ...KEYS.split('').map((key) => button(key, '', () => this.#press(key))),
      button('Space', 'wide', () => this.#press(' ')),
      button('Back', 'wide', () => this.#set(this.#value.slice(0, -1))),
      button('Clear', 'wide', () => this.#set('')));
    keys.tabIndex = -1;
    this.replaceChildren(make('p', 'pad-label', this.text('label')), face, keys,
      make('p', 'pad-fault'), button(this.text('enter') || 'Enter', 'main', () => this.#enter()));
    this.onkeydown = (event) => this.#typed(event);
  }

  #typed(event) {
    if (event.ctrlKey || event.altKey || event.metaKey) {
      return;
    }
    if (event.key === 'Backspace') {
      this.#set(this.#value.slice(0, -1));
    } else if (event.key.length === 1 && event.key !== ' ') {
      this.#press(event.key);
    }
  }

  /** The first letter of a sentence stands as it is, the others in lower case, as people write. */
  #press(key) {
    const small = /[\p{L}]$|[ ,]$/u.test(this.#value) && !/[.] ?$/.test(this.#value);
    this.#set((this.#value + (small ? key.toLowerCase() : key)).slice(0, this.number('length', 120)));
  }

  #set(value) {
    this.#value = value;
    this.querySelector('.text-face').textContent = value || '\u00a0';
    this.querySelector('.pad-fault').textContent = '';
  }

  #enter() {
    if (this.#value.trim().length < 3) {
      const fault = this.querySelector('.pad-fault');
      fault.setAttribute('role', 'alert');
      fault.textContent = 'First press a few words.';
      return;
    }
    if (mayAct()) {
      this.raise('entered', { value: this.#value.trim() });
    }
  }
}

customElements.define('shop-text-pad', ShopTextPad);
