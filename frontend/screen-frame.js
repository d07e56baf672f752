/** The frame's living bits: the band that tells of a lost server, the word in the header, and the clock. */
import { beat, linkState, mayAct } from './heartbeat.js';
import { mark } from './marks.js';
import { make, Part } from './part.js';
import { play } from './tones.js';

const BANDS = {
  lost: ['parted', 'The server cannot be reached. Timers on this page run on. Nothing you sign now counts.'],
  refused: ['parted',
    'Not taken: the server cannot be reached. Do it again when it is back. Timers on this page run on.'],
  back: ['linked', 'The server is back. Go on; what was not accepted before has to be done again.'],
};

/** What acts in the page alone, or asks {@link mayAct} by itself. */
const OWN = 'shop-key-pad, shop-text-pad, shop-scan-input, shop-camera-scanner, shop-verdict, dialog';

/**
 * <shop-link alive-url>: starts the heartbeat; empty while all is well. While the server cannot be reached, presses
 * that would go to it are stopped, and it says so.
 */
class ShopLink extends Part {
  #refused = false;
  #hear = () => {
    this.#refused = false;
    this.draw();
  };
  #notTaken = () => {
    this.#refused = true;
    play('refused');
    this.draw();
  };
  #pressed = (event) => {
    const pressed = event.target.closest?.('button, vaadin-button, a[href]');
    if (pressed && !pressed.closest(OWN) && !mayAct()) {
      event.preventDefault();
      event.stopImmediatePropagation();
    }
  };

  connectedCallback() {
    this.setAttribute('role', 'alert');
    window.addEventListener('shop-link', this.#hear);
    window.addEventListener('shop-not-taken', this.#notTaken);
    window.addEventListener('click', this.#pressed, true);
    beat(this.text('alive-url') || '/alive');
    super.connectedCallback();
  }

  disconnectedCallback() {
    window.removeEventListener('shop-link', this.#hear);
    window.removeEventListener('shop-not-taken', this.#notTaken);
    window.removeEventListener('click', this.#pressed, true);
  }

  draw() {
    this.replaceChildren();
    const band = BANDS[this.#refused ? 'refused' : linkState()];
    if (band) {
      const shown = make('div', 'link-band');
      shown.dataset.state = linkState();
      shown.innerHTML = mark(band[0]);
      shown.append(make('span', '', band[1]));
      this.append(shown);
    }
  }
}

/** <shop-link-word>: one word with its mark in the header. */
class ShopLinkWord extends Part {
  #hear = () => this.draw();

  connectedCallback() {
    window.addEventListener('shop-link', this.#hear);
    super.connectedCallback();
  }

  disconnectedCallback() {
    window.removeEventListener('shop-link', this.#hear);
  }

  draw() {
    const lost = linkState() === 'lost';
    this.innerHTML = mark(lost ? 'parted' : 'linked');
    this.append(make('span', '', lost ? 'No server' : 'Linked'));
  }
}

/** <shop-clock wall-ms speed zone>: the shop's wall clock, carried on by the page's monotonic time. */
class ShopClock extends Part {
  static observedAttributes = ['wall-ms', 'speed', 'zone'];
  #anchor = 0;
  #timer;

  connectedCallback() {
    this.#timer = setInterval(() => this.draw(), 1000);
    super.connectedCallback();
  }

  disconnectedCallback() {
    clearInterval(this.#timer);
  }

  attributeChangedCallback(name) {
    if (name === 'wall-ms') {
      this.#anchor = performance.now();
    }
    super.attributeChangedCallback();
  }

  draw() {
    const wall = this.number('wall-ms') + (performance.now() - this.#anchor) * this.number('speed', 1);
    this.textContent = new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit',
      timeZone: this.text('zone') || 'UTC' }).format(wall);
  }
}

customElements.define('shop-link', ShopLink);
customElements.define('shop-link-word', ShopLinkWord);
customElements.define('shop-clock', ShopClock);
