/**
 * <shop-scan-input burst-ms idle-ms shortest frame-url csrf-header csrf-token>: the page's one ear for scans.
 *
 * Raises `scan` {data, source}, source one of wedge, camera, typed. While the server cannot be reached a scan is not
 * queued for later, because it would then be signed for at the wrong time: the page says that it was not taken.
 */
import { CameraSheet } from './camera-scanner.js';
import { linkState } from './heartbeat.js';
import './marks.js';
import { button, make, Part } from './part.js';
import { play } from './tones.js';
import { TypeSheet } from './type-sheet.js';
import { WedgeReader } from './wedge-reader.js';

const READY = 'Ready to scan';
const SAID_SHOWN_MS = 4000;

class ShopScanInput extends Part {
  #reader;
  #timer;

  connectedCallback() {
    this.#reader = new WedgeReader({
      burstMs: this.number('burst-ms', 40),
      idleMs: this.number('idle-ms', 120),
      shortest: this.number('shortest', 4),
      scanned: (data, source) => this.#scanned(data, source),
    });
    this.#reader.listen();
    super.connectedCallback();
  }

  disconnectedCallback() {
    this.#reader.stop();
    clearTimeout(this.#timer);
    document.querySelectorAll('dialog[data-scan]').forEach((sheet) => sheet.close());
  }

  draw() {
    if (this.querySelector('.scan-row')) {
      return;
    }
    const sign = make('shop-mark');
    sign.setAttribute('kind', 'scan');
    const words = make('span', 'scan-says', READY);
    const says = make('p', 'scan-state', sign, words);
    says.setAttribute('role', 'status');
    this.append(make('div', 'scan-row', says, button('Type it', '', () => this.#type()),
      button('Camera', '', () => this.#look())));
  }

  #type() {
    new TypeSheet((data) => this.#scanned(data, 'typed')).open();
  }

  #look() {
    new CameraSheet({ url: this.text('frame-url'), csrfHeader: this.text('csrf-header'),
      csrfToken: this.text('csrf-token') }, (data) => this.#scanned(data, 'camera')).open();
  }

  #scanned(data, source) {
    if (linkState() === 'lost') {
      play('refused');
      this.#say('Not taken: no server. Scan again when it is back.');
      return;
    }
    this.#say(`Read ${readable(data)}`);
    this.raise('scan', { data, source });
  }

  #say(words) {
    clearTimeout(this.#timer);
    const place = this.querySelector('.scan-says');
    if (place) {
      place.textContent = words;
      this.#timer = setTimeout(() => { place.textContent = READY; }, SAID_SHOWN_MS);
    }
  }
}

/** The data for a person: without its envelope (ISO/IEC 15434), separators as a dot, cut where it is long. */
function readable(data) {
  const bare = data.replace(/^\[\)>\u001e\d\d\u001d/, '').replace(/[\u001e\u0004]+$/, '');
  const shown = bare.replace(/[\u0000-\u001f]+/g, ' · ').trim();
  return shown.length > 40 ? `${shown.slice(0, 39)}…` : shown;
}

customElements.define('shop-scan-input', ShopScanInput);
