/** <shop-camera-scanner words frame-url csrf-header csrf-token>: a button that opens the camera; raises `scan`. */
import { CameraSheet } from './camera-scanner.js';
import { button, Part } from './part.js';

class ShopCameraScanner extends Part {
  static observedAttributes = ['words'];

  draw() {
    this.replaceChildren(button(this.text('words'), '', () => this.#look()));
  }

  #look() {
    const target = { url: this.text('frame-url'), csrfHeader: this.text('csrf-header'),
      csrfToken: this.text('csrf-token') };
    new CameraSheet(target, (data) => this.raise('scan', { data, source: 'camera' })).open();
  }
}

customElements.define('shop-camera-scanner', ShopCameraScanner);
