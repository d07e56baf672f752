/**
 * <shop-arc-switch run running usable arc words under now-ms speed>: one very large touch that begins and ends an arc,
 * and a foot switch that does the same.
 *
 * The foot switch is a key of the keyboard, F9 unless the tablet keeps another one. It is heard whatever has the focus;
 * a key held down repeats and is heard once; two presses within a moment are one. Raises `arc-pressed` {want, arc, at,
 * by}: `want` is start or stop as the page showed it, `arc` the number of the arc that runs, `at` the shop's elapsed
 * time of the press, so that the server can tell a press that reached it late. While the server cannot be reached no
 * press is kept for later.
 */
import { mayAct } from './heartbeat.js';
import { button, make } from './part.js';
import { digits, RunningClock } from './running-clock.js';
import { play } from './tones.js';

const KEPT = 'shop-foot-switch';
const USUAL = 'F9';
const BOUNCE_MS = 700;
const ANSWER_MS = 4000;
/** Keys that no scanner sends and that do nothing else on a tablet: F8 is a scanner's separator, F5 loads anew. */
const MAY_BE = /^(F[1-4679]|F10|PageUp|PageDown|Home|End|Insert|Pause|ScrollLock|Media\w+)$/;

/** The key that this tablet's foot switch sends. */
export function footKey() {
  try {
    return localStorage.getItem(KEPT) || USUAL;
  } catch (forbidden) {
    return USUAL;
  }
}

function keep(key) {
  try {
    localStorage.setItem(KEPT, key);
  } catch (forbidden) {
    // The tablet forgets it with the page; the switch works until then.
  }
}

class ShopArcSwitch extends RunningClock {
  static observedAttributes = ['run', 'running', 'usable', 'arc', 'words', 'under', 'now-ms', 'speed'];
  #pressedAt = -Infinity;
  #waits = false;
  #parts;
  #timer;

  connectedCallback() {
    window.addEventListener('keydown', this.#down, true);
    super.connectedCallback();
  }

  disconnectedCallback() {
    window.removeEventListener('keydown', this.#down, true);
    clearTimeout(this.#timer);
    super.disconnectedCallback();
  }

  attributeChangedCallback(name) {
    if (name === 'run' || name === 'running') {
      this.#answered();
    }
    super.attributeChangedCallback(name);
  }

  #down = (event) => {
    if (!event.isTrusted || event.key !== footKey() || document.querySelector('dialog[open]')) {
      return;
    }
    event.preventDefault();
    event.stopImmediatePropagation();
    if (!event.repeat) {
      this.#press('pedal');
    }
  };

  #press(by) {
    const now = performance.now();
    if (now - this.#pressedAt < BOUNCE_MS || this.#waits || !this.hasAttribute('usable')) {
      return;
    }
    this.#pressedAt = now;
    if (!mayAct()) {
      return;
    }
    this.#waits = true;
    this.#timer = setTimeout(() => this.#answered(), ANSWER_MS);
    play(this.hasAttribute('running') ? 'before-minimum' : 'accepted');
    this.raise('arc-pressed', { want: this.hasAttribute('running') ? 'stop' : 'start', arc: this.number('arc'),
      at: Math.round(this.shopNow()), by });
    this.draw();
  }

  #answered() {
    clearTimeout(this.#timer);
    this.#waits = false;
    this.redraw();
  }

  #build() {
    const words = make('span', 'arc-words');
    const under = make('span', 'arc-under');
    const press = button('', 'arc', () => this.#press('touch'));
    press.append(words, under);
    const state = make('span', 'foot-state');
    state.setAttribute('role', 'status');
    const change = button('Another foot switch', 'foot-change', () => this.#choose());
    this.#parts = { words, under, press, state, change };
    this.replaceChildren(press, make('div', 'foot-row', state, change));
  }

  draw() {
    if (!this.#parts) {
      this.#build();
    }
    const { words, under, press, state, change } = this.#parts;
    const running = this.hasAttribute('running');
    const usable = this.hasAttribute('usable');
    press.disabled = !usable;
    press.dataset.running = String(running);
    press.toggleAttribute('data-waits', this.#waits);
    set(words, this.text('words'));
    set(under, this.#waits ? 'Told the server …' : this.text('under'));
    set(state, usable ? `Foot switch armed: key ${footKey()} ${running ? 'ends' : 'begins'} the arc.`
      : `Foot switch (key ${footKey()}) not armed.`);
    change.hidden = running;
  }

  /** Asks for the foot switch to be pressed, and keeps what key it sends. */
  #choose() {
    const says = make('p', 'foot-says', 'Press the foot switch now. This tablet keeps the key that it sends.');
    says.setAttribute('role', 'status');
    const dialog = make('dialog', 'shop-sheet');
    dialog.setAttribute('aria-label', 'Foot switch of this tablet');
    const close = () => {
      window.removeEventListener('keydown', hear, true);
      dialog.close();
      dialog.remove();
      this.redraw();
    };
    const hear = (event) => {
      // A printable key comes a second time from whoever listens for scanners: it is only talked about here.
      if (event.key === 'Escape' || event.repeat || (MAY_BE.test(event.key) && !event.isTrusted)) {
        return;
      }
      event.preventDefault();
      event.stopImmediatePropagation();
      if (MAY_BE.test(event.key)) {
        keep(event.key);
        close();
      } else {
        says.textContent = `Key ${event.key} is used for scanning or typing. Set the foot switch to F9 or another`
          + ' function key, then press it again.';
      }
    };
    window.addEventListener('keydown', hear, true);
    dialog.addEventListener('cancel', close);
    dialog.append(make('h2', '', `Foot switch: key ${footKey()}`), says,
      make('div', 'sheet-actions', button('Leave it as it is', '', close)));
    document.body.append(dialog);
    dialog.showModal();
  }
}

/** <shop-run-clock label run started-ms now-ms speed>: how long something has lasted, in digits that count up. */
class ShopRunClock extends RunningClock {
  static observedAttributes = ['run', 'started-ms', 'label', 'speed'];
  #parts;

  draw() {
    if (!this.#parts) {
      this.#parts = { label: make('p', 'run-label'), digits: make('div', 'run-digits'), notes: make('p', 'run-notes') };
      this.#parts.digits.setAttribute('role', 'timer');
      this.replaceChildren(this.#parts.label, this.#parts.digits, this.#parts.notes);
    }
    set(this.#parts.label, this.text('label'));
    set(this.#parts.digits, digits(this.since(), false));
    set(this.#parts.notes, this.notes().join(' '));
  }
}

function set(element, text) {
  if (element.textContent !== text) {
    element.textContent = text;
  }
}

customElements.define('shop-arc-switch', ShopArcSwitch);
customElements.define('shop-run-clock', ShopRunClock);
