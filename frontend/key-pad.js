/**
 * <shop-key-pad mode label unit limits-text decimals signed length>: large keys for gloves.
 *
 * mode `reading`: digits, point where decimals are asked for, sign where the reading may be below zero.
 * mode `pin`: dots for digits. mode `pass-fail`: "In order" or "Not in order", then Enter.
 * Raises `entered` {value}: the number as typed with a point, the PIN, or 1 and 0. Only the form is checked here;
 * whether the value is within its limits is for the server to say.
 */
import { mayAct } from './heartbeat.js';
import { button, make, Part } from './part.js';
import './marks.js';

const DIGITS_MAX = 8;

class ShopKeyPad extends Part {
  static observedAttributes = ['mode', 'label', 'unit', 'limits-text', 'decimals', 'signed', 'length', 'run'];
  #value = '';

  connectedCallback() {
    this.addEventListener('keydown', this.#typed);
    super.connectedCallback();
  }

  disconnectedCallback() {
    this.removeEventListener('keydown', this.#typed);
  }

  attributeChangedCallback(name) {
    if (name === 'run') {
      this.#value = '';
    }
    super.attributeChangedCallback();
  }

  draw() {
    this.setAttribute('role', 'group');
    this.setAttribute('aria-label', this.text('label'));
    const head = [make('p', 'pad-label', this.text('label'))];
    if (this.text('limits-text')) {
      head.push(make('p', 'pad-limits', this.text('limits-text')));
    }
    this.replaceChildren(...head, ...(this.text('mode') === 'pass-fail' ? this.#answers() : this.#keys()));
    this.#drawFace();
  }

  #answers() {
    const answer = (text, kind, value) => {
      const made = button('', '', () => this.#press(value));
      const drawn = make('shop-mark');
      drawn.setAttribute('kind', kind);
      made.append(drawn, text);
      made.dataset.value = value;
      return made;
    };
    return [make('p', 'pad-fault'),
      make('div', 'pad-answers', answer('In order', 'signed', '1'), answer('Not in order', 'refused', '0')),
      button('Enter', 'main', () => this.#enter())];
  }

  #keys() {
    const pin = this.text('mode') === 'pin';
    const face = make('div', 'pad-face');
    face.setAttribute('role', 'status');
    const key = (text, press, names = '', aloud = '') => {
      const made = button(text, names, press);
      if (aloud) {
        made.setAttribute('aria-label', aloud);
      }
      return made;
    };
    const digit = (value) => key(value, () => this.#press(value));
    const side = (made, row) => {
      made.style.gridColumn = '4';
      made.style.gridRow = row;
      return made;
    };
    const keys = make('div', 'pad-keys', ...'789456123'.split('').map(digit),
      this.hasAttribute('signed') && !pin ? key('+/−', () => this.#turn(), '', 'Plus or minus') : make('span'),
      digit('0'),
      this.number('decimals') > 0 && !pin ? key('.', () => this.#press('.'), '', 'Point') : make('span'),
      side(key('Back', () => this.#back(), 'word-key', 'Take back the last digit'), '1'),
      side(key('Clear', () => this.#clear(), 'word-key'), '2'),
      key('Enter', () => this.#enter(), 'main pad-enter'));
    return [face, make('p', 'pad-fault'), keys];
  }

  #drawFace() {
    for (const answer of this.querySelectorAll('[data-value]')) {
      answer.setAttribute('aria-pressed', String(answer.dataset.value === this.#value));
    }
    const face = this.querySelector('.pad-face');
    if (!face) {
      return;
    }
    if (this.text('mode') === 'pin') {
      face.replaceChildren(this.#dots());
    } else {
      face.replaceChildren(make('span', '', this.#value.replace('-', '−') || '\u00a0'),
        make('span', 'pad-unit', this.text('unit')));
    }
  }

  #dots() {
    const wanted = Math.max(this.number('length', 4), this.#value.length);
    const dots = make('span', 'pad-dots', ...Array.from({ length: wanted },
      (unused, index) => make('i', index < this.#value.length ? 'filled' : '')));
    dots.setAttribute('role', 'img');
    dots.setAttribute('aria-label', `${this.#value.length} digits entered`);
    return dots;
  }

  #typed = (event) => {
    if (event.ctrlKey || event.altKey || event.metaKey || this.text('mode') === 'pass-fail') {
      return;
    }
    const actions = { Backspace: () => this.#back(), Delete: () => this.#clear(), '-': () => this.#turn(),
      ',': () => this.#press('.'), '.': () => this.#press('.') };
    const action = /^[0-9]$/.test(event.key) ? () => this.#press(event.key) : actions[event.key];
    if (action) {
      event.preventDefault();
      action();
    }
  };

  #press(symbol) {
    this.#fault('');
    if (this.text('mode') === 'pass-fail') {
      this.#value = symbol;
    } else if (this.#admits(symbol)) {
      this.#value = symbol === '.' && /^-?$/.test(this.#value) ? `${this.#value}0.` : this.#value + symbol;
    }
    this.#drawFace();
  }

  #admits(symbol) {
    const [whole, fraction] = this.#value.split('.');
    if (this.text('mode') === 'pin') {
      return symbol !== '.' && this.#value.length < DIGITS_MAX;
    }
    if (symbol === '.') {
      return this.number('decimals') > 0 && fraction === undefined;
    }
    return fraction === undefined ? whole.length < DIGITS_MAX : fraction.length < this.number('decimals');
  }

  #turn() {
    if (this.hasAttribute('signed')) {
      this.#value = this.#value.startsWith('-') ? this.#value.slice(1) : `-${this.#value}`;
      this.#drawFace();
    }
  }

  #back() {
    this.#value = this.#value.slice(0, -1);
    this.#drawFace();
  }

  #clear() {
    this.#value = '';
    this.#fault('');
    this.#drawFace();
  }

  #enter() {
    if (!/[0-9]$/.test(this.#value)) {
      this.#fault(this.text('mode') === 'pass-fail' ? 'First press what you saw.' : 'First press the digits.');
      return;
    }
    const value = this.#value;
    if (this.text('mode') === 'pin') {
      this.#clear();
    }
    if (mayAct()) {
      this.raise('entered', { value });
    }
  }

  #fault(words) {
    const place = this.querySelector('.pad-fault');
    if (place) {
      place.setAttribute('role', 'alert');
      place.textContent = words;
    }
  }
}

customElements.define('shop-key-pad', ShopKeyPad);
