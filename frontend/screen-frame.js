/** The frame's living bits: the band that tells of a lost server, the word in the header, and the clock. */
import { beat, linkState } from './heartbeat.js';
import { mark } from './marks.js';
import { make, Part } from './part.js';

const BANDS = {
  lost: ['parted', 'The server cannot be reached. Timers on this page run on. Nothing you sign now counts.'],
  back: ['linked', 'The server is back. Go on; what was not accepted before has to be done again.'],
};

/** <shop-link alive-url>: starts the heartbeat; empty while all is well. */
class ShopLink extends Part {
  #hear = () => this.draw();

  connectedCallback() {
    this.setAttribute('role', 'alert');
    window.addEventListener('shop-link', this.#hear);
    beat(this.text('alive-url') || '/alive');
    super.connectedCallback();
  }

  disconnectedCallback() {
    window.removeEventListener('shop-link', this.#hear);
  }

  draw() {
    this.replaceChildren();
    const band = BANDS[linkState()];
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
