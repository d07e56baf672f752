/**
 * <shop-live-place beat>: what in it comes from the server every second. Where `beat` has not changed for a while, or
 * the server cannot be reached, the place has the attribute `still`, and its look says that its numbers stand still.
 */
import { linkState } from './heartbeat.js';
import { Part } from './part.js';

const STILL_MS = 6000;
const LOOK_MS = 1000;

class ShopLivePlace extends Part {
  static observedAttributes = ['beat'];
  #beatAt = performance.now();
  #timer;
  #look = () => this.draw();

  connectedCallback() {
    this.#beatAt = performance.now();
    this.#timer = setInterval(this.#look, LOOK_MS);
    window.addEventListener('shop-link', this.#look);
    super.connectedCallback();
  }

  disconnectedCallback() {
    clearInterval(this.#timer);
    window.removeEventListener('shop-link', this.#look);
  }

  attributeChangedCallback() {
    this.#beatAt = performance.now();
    super.attributeChangedCallback();
  }

  draw() {
    this.toggleAttribute('still', linkState() === 'lost' || performance.now() - this.#beatAt > STILL_MS);
  }
}

customElements.define('shop-live-place', ShopLivePlace);
