/** The last resort: a label's text on large keys of our own, in the order of the alphabet. */
import { button, make } from './part.js';

const KEYS = '0123456789-.ABCDEFGHIJKLMNOPQRSTUVWXYZ/';
const LENGTH_MAX = 64;

export class TypeSheet {
  #typed;
  #value = '';
  #face = make('div', 'type-face', '\u00a0');
  #sheet = make('dialog', 'shop-sheet');

  /** @param typed called with the text when it is used */
  constructor(typed) {
    this.#typed = typed;
  }

  /** Shows the sheet; it removes itself when it is closed. */
  open() {
    this.#face.setAttribute('role', 'status');
    this.#sheet.dataset.scan = 'type';
    this.#sheet.setAttribute('aria-label', 'Type the label');
    const keys = make('div', 'type-keys', ...KEYS.split('').map((key) => button(key, '', () => this.#press(key))),
      button('Back', 'wide', () => this.#set(this.#value.slice(0, -1))), button('Clear', 'wide', () => this.#set('')));
    this.#sheet.append(make('h2', '', 'Type what the label says. It is recorded as typed.'), this.#face, keys,
      make('div', 'sheet-actions', button('Use this', 'main', () => this.#use()),
        button('Close', '', () => this.#sheet.close())));
    this.#sheet.addEventListener('close', () => this.#sheet.remove());
    document.body.append(this.#sheet);
    this.#sheet.showModal();
  }

  #press(key) {
    this.#set((this.#value + key).slice(0, LENGTH_MAX));
  }

  #set(value) {
    this.#value = value;
    this.#face.textContent = value || '\u00a0';
  }

  #use() {
    if (this.#value) {
      this.#sheet.close();
      this.#typed(this.#value);
    }
  }
}
