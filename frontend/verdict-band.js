/**
 * <shop-verdict kind word reason way-out run>: what the shop made of a scan or a signature.
 *
 * Shown anew for each `run`. Accepted goes by itself; refused stays until it is pressed away or
 * until the server clears it. A refusal that is standing is never covered by the page itself.
 */
import { mark } from './marks.js';
import { button, make, Part } from './part.js';
import { play } from './tones.js';

const ACCEPTED_SHOWN_MS = 5000;

class ShopVerdict extends Part {
  static observedAttributes = ['kind', 'run'];
  #timer;
  #shown = '';

  connectedCallback() {
    this.setAttribute('role', 'alert');
    super.connectedCallback();
  }

  disconnectedCallback() {
    clearTimeout(this.#timer);
  }

  draw() {
    const kind = this.text('kind');
    if (!kind) {
      this.#clear();
    } else if (this.text('run') !== this.#shown) {
      this.#show(kind);
    }
  }

  #show(kind) {
    clearTimeout(this.#timer);
    this.#shown = this.text('run');
    const refused = kind === 'refused';
    const band = make('div', 'verdict');
    band.dataset.kind = kind;
    band.innerHTML = mark(refused ? 'refused' : 'signed');
    band.style.setProperty('--mark-hole', refused ? 'var(--brick)' : 'var(--card)');
    const words = make('div', '', make('p', 'verdict-word', this.text('word')));
    for (const part of ['reason', 'way-out']) {
      if (this.text(part)) {
        words.append(make('p', `verdict-${part}`, this.text(part)));
      }
    }
    band.append(words);
    if (refused) {
      band.append(button('Seen', '', () => this.#clear()));
    } else {
      this.#timer = setTimeout(() => this.#clear(), ACCEPTED_SHOWN_MS);
    }
    this.replaceChildren(band);
    play(kind);
  }

  #clear() {
    clearTimeout(this.#timer);
    this.replaceChildren();
  }
}

customElements.define('shop-verdict', ShopVerdict);
