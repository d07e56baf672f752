/**
 * Tells a scanner that types (a keyboard wedge) from a person who types.
 *
 * Every printable key is held back for a moment, whatever has the focus. Keys that follow each other within `burstMs`
 * are a burst; a burst of at least `shortest` characters is a scan, ended by Enter, Tab, line feed, or by nothing
 * for `idleMs`. Anything else was a person: the held keys are given back to where they were typed, in order, before
 * the next key acts, so a form sees them as if nothing had happened (at most `burstMs` later). A key held down
 * repeats as fast as a scanner; repeats are a person's.
 *
 * Inside a scan these become data: the separators GS, RS, US, FS and EOT as control keys (Ctrl+] and its
 * neighbours), as the bare character, GS also as F8; characters typed as Alt and digits on the number block. An AIM
 * prefix such as ]d2 is left in the data. Scanner and tablet have to be set to the same keyboard layout: a dead key
 * cannot be told back.
 */
const CONTROL = { ']': '\u001d', '^': '\u001e', 6: '\u001e', _: '\u001f', '-': '\u001f', '\\': '\u001c', d: '\u0004' };
const SEPARATORS = /^[\u0004\u001c-\u001f]$/;
const LENGTH_MAX = 1024;

/** What a key means to a scan: {char}, {end}, {still} (says nothing), or undefined for a person's key. */
export function meaning(event) {
  const { key } = event;
  if (['Shift', 'Control', 'Alt', 'AltGraph', 'CapsLock', 'NumLock'].includes(key)) {
    return { still: true };
  }
  if (key === 'F8') {
    return { char: '\u001d' };
  }
  if (SEPARATORS.test(key)) {
    return { char: key };
  }
  if (key === 'Enter' || key === 'Tab') {
    return event.ctrlKey || event.altKey || event.shiftKey ? undefined : { end: true };
  }
  if (event.metaKey || key.length !== 1) {
    return undefined;
  }
  if (event.getModifierState('AltGraph') || !(event.ctrlKey || event.altKey)) {
    return { char: key };
  }
  return event.ctrlKey && !event.altKey ? control(key.toLowerCase()) : undefined;
}

function control(key) {
  if (key === 'm' || key === 'j' || key === 'i') {
    return { end: true, onlyInside: true };
  }
  return key in CONTROL ? { char: CONTROL[key], onlyInside: key !== ']' && key !== '^' && key !== '6' } : undefined;
}

export class WedgeReader {
  #settings;
  #held = [];
  #text = '';
  #last = -Infinity;
  #timer;
  #swallowed = new Set();
  #endedAt = -Infinity;
  #alt = '';
  #altEndedAt = -Infinity;

  /** @param settings {burstMs, idleMs, shortest, scanned(text, source)} */
  constructor(settings) {
    this.#settings = settings;
  }

  /** Listens on the whole window, before anything in the page. */
  listen() {
    window.addEventListener('keydown', this.#down, true);
    window.addEventListener('keypress', this.#press, true);
    window.addEventListener('keyup', this.#up, true);
    window.addEventListener('pointerdown', this.#touched, true);
    window.addEventListener('blur', this.#left);
    window.addEventListener('paste', this.#pasted, true);
  }

  /** Stops listening; held keys are given back. */
  stop() {
    this.#giveBack();
    window.removeEventListener('keydown', this.#down, true);
    window.removeEventListener('keypress', this.#press, true);
    window.removeEventListener('keyup', this.#up, true);
    window.removeEventListener('pointerdown', this.#touched, true);
    window.removeEventListener('blur', this.#left);
    window.removeEventListener('paste', this.#pasted, true);
  }

  #isBurst() {
    return this.#text.length >= this.#settings.shortest;
  }

  #down = (event) => {
    if (!event.isTrusted || event.isComposing || event.keyCode === 229) {
      return;
    }
    if (event.altKey && /^Numpad[0-9]$/.test(event.code)) {
      this.#alt += event.code.slice(-1);
      this.#swallow(event);
      return;
    }
    const { burstMs, idleMs } = this.#settings;
    if (this.#held.length > 0 && event.timeStamp - this.#last > (this.#isBurst() ? idleMs : burstMs)) {
      this.#finish();
    }
    const means = event.repeat ? undefined : meaning(event);
    if (means?.still) {
      return;
    }
    if (means?.end) {
      this.#end(event);
    } else if (means?.char !== undefined && !(means.onlyInside && this.#held.length === 0)) {
      this.#hold(event, means.char);
    } else {
      this.#finish();
    }
  };

  #hold(event, char) {
    if (char === ' ' && this.#held.length === 0) {
      return;
    }
    this.#swallow(event);
    this.#held.push({ event, char, target: focused() });
    this.#grow(char, event.timeStamp);
  }

  #grow(char, at) {
    if (this.#text.length < LENGTH_MAX) {
      this.#text += char;
    }
    this.#last = at;
    this.#await();
  }

  #end(event) {
    if (event.timeStamp - this.#endedAt < this.#settings.burstMs) {
      this.#swallow(event);
    } else if (this.#isBurst()) {
      this.#swallow(event);
      this.#endedAt = event.timeStamp;
      this.#finish();
    } else {
      this.#finish();
    }
  }

  #await() {
    clearTimeout(this.#timer);
    const wait = this.#isBurst() ? this.#settings.idleMs : this.#settings.burstMs;
    // Keys that wait behind a busy page come before the second timer, so a slow page does not break a scan.
    this.#timer = setTimeout(() => {
      this.#timer = setTimeout(() => this.#finish(), 0);
    }, wait);
  }

  /** The burst is over: a scan where it was long enough, else a person's keys. */
  #finish() {
    if (this.#isBurst()) {
      const text = this.#text;
      this.#forget();
      this.#settings.scanned(text, 'wedge');
    } else {
      this.#giveBack();
    }
  }

  #forget() {
    clearTimeout(this.#timer);
    this.#held = [];
    this.#text = '';
  }

  #giveBack() {
    const held = this.#held;
    this.#forget();
    held.forEach(({ event, char, target }) => retype(event, char, target));
  }

  #left = () => this.#finish();

  /** A touch between a person's keys must find them in their field; a touch during a scan does not end the scan. */
  #touched = () => {
    if (!this.#isBurst()) {
      this.#giveBack();
    }
  };

  #swallow(event) {
    event.preventDefault();
    event.stopImmediatePropagation();
    this.#swallowed.add(event.code);
  }

  #press = (event) => {
    if (event.isTrusted && event.timeStamp - this.#altEndedAt < this.#settings.burstMs) {
      event.preventDefault();
    }
  };

  /** The release of a swallowed key is swallowed too, so that a focused button does not take it for its own. */
  #up = (event) => {
    if (event.isTrusted && event.key === 'Alt' && this.#alt) {
      const char = String.fromCharCode(Number(this.#alt));
      this.#alt = '';
      this.#altEndedAt = event.timeStamp;
      this.#held.push({ event, char, target: focused() });
      this.#grow(char, event.timeStamp);
    }
    if (event.isTrusted && this.#swallowed.delete(event.code)) {
      event.preventDefault();
      event.stopImmediatePropagation();
    }
  };

  /** Pasted text is a scan where no field has the focus or where it carries a label's own separators. */
  #pasted = (event) => {
    const text = event.clipboardData?.getData('text') ?? '';
    if (text && (!isField(focused()) || /[\u001d\u001e]/.test(text) || text.startsWith('[)>'))) {
      event.preventDefault();
      event.stopImmediatePropagation();
      this.#settings.scanned(text.slice(0, LENGTH_MAX).replace(/[\r\n\t]+$/, ''), 'typed');
    }
  };
}

/** The element that has the focus, inside shadow trees too. */
function focused() {
  let element = document.activeElement ?? document.body;
  while (element.shadowRoot?.activeElement) {
    element = element.shadowRoot.activeElement;
  }
  return element;
}

function isField(element) {
  return element.isContentEditable || element instanceof HTMLTextAreaElement
    || (element instanceof HTMLInputElement && typeof element.selectionStart !== 'undefined'
      && !['button', 'checkbox', 'radio', 'submit', 'range', 'color', 'file'].includes(element.type));
}

/** Gives one key back to `target` as the browser would have delivered it. */
function retype(event, char, target) {
  const copy = (type) => new KeyboardEvent(type, { key: event.key, code: event.code, shiftKey: event.shiftKey,
    ctrlKey: event.ctrlKey, altKey: event.altKey, bubbles: true, cancelable: true, composed: true });
  const wanted = target.dispatchEvent(copy('keydown'));
  if (wanted && isField(target) && !target.readOnly && !target.disabled && char >= ' ') {
    insert(target, char);
  }
  target.dispatchEvent(copy('keyup'));
}

/** Inserts at the caret; execCommand keeps undo and raises the input events by itself where it works. */
function insert(target, char) {
  if (target !== focused()) {
    target.focus();
  }
  if (!document.execCommand('insertText', false, char) && typeof target.setRangeText === 'function') {
    target.setRangeText(char, target.selectionStart ?? target.value.length, target.selectionEnd ?? target.value.length,
      'end');
    target.dispatchEvent(new InputEvent('input', { data: char, inputType: 'insertText', bubbles: true,
      composed: true }));
  }
}
