/**
 * <shop-hold-clock label run started-ms now-ms minimum-ms maximum-ms speed at-minimum at-maximum>: a hold in digits,
 * down to the minimum, down to the maximum, then up. Raises `phase-changed` {phase: 'holding' | 'open' | 'over'}.
 */
import { Awake } from './awake.js';
import { linkState } from './heartbeat.js';
import { make } from './part.js';
import { digits, RunningClock, spelt } from './running-clock.js';
import { play, soundIsReady } from './tones.js';

const OVERRUN_TONE_EVERY_MS = 15000;

class ShopHoldClock extends RunningClock {
  static observedAttributes = ['run', 'started-ms', 'minimum-ms', 'maximum-ms', 'speed', 'label', 'at-minimum',
    'at-maximum'];
  #awake = new Awake();
  #phase;
  #near;
  #overrunTone = 0;
  #parts;

  connectedCallback() {
    super.connectedCallback();
    this.#awake.keep();
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    this.#awake.release();
  }

  /** Where the hold stands: its phase, the digits' milliseconds, and whether a limit is near. */
  #standing() {
    const since = this.since();
    const minimum = this.number('minimum-ms');
    const maximum = this.number('maximum-ms', Infinity);
    if (since < minimum) {
      return { phase: 'holding', ms: minimum - since, up: true, near: minimum - since <= this.warning(minimum) };
    }
    if (since < maximum) {
      const left = maximum - since;
      return { phase: 'open', ms: Number.isFinite(left) ? left : since - minimum, up: Number.isFinite(left),
        near: left <= this.warning(maximum - minimum) };
    }
    return { phase: 'over', ms: since - maximum, up: false, near: false };
  }

  #words(phase) {
    const limited = this.hasAttribute('maximum-ms');
    const [label, may, spoilt] = ['label', 'at-minimum', 'at-maximum'].map((name) => this.text(name));
    return {
      holding: [`${label}: left until the minimum`, `At zero: ${may}`],
      open: limited
        ? [`${label}: minimum kept. Left until the maximum`, `${sentence(may)} At zero: ${spoilt}`]
        : [`${label}: minimum kept, held longer by`, sentence(may)],
      over: [`${label}: OVER THE MAXIMUM by`, sentence(spoilt)],
    }[phase];
  }

  #build() {
    const parts = {
      phase: make('p', 'hold-phase'), digits: make('div', 'hold-digits'), zero: make('p', 'hold-zero'),
      done: make('div', 'hold-run-done'), run: make('div', 'hold-run'), limits: make('p', 'hold-limits'),
      notes: make('ul', 'hold-notes'), aloud: make('p', 'only-read-aloud'),
    };
    parts.digits.setAttribute('role', 'timer');
    parts.aloud.setAttribute('aria-live', 'polite');
    parts.run.setAttribute('aria-hidden', 'true');
    parts.hold = make('div', 'hold', parts.phase, parts.digits, parts.zero, parts.run, parts.limits, parts.notes,
      parts.aloud);
    this.#parts = parts;
    this.replaceChildren(parts.hold);
  }

  draw() {
    if (!this.#parts) {
      this.#build();
    }
    const standing = this.#standing();
    this.#drawWords(standing);
    this.#drawRun();
    this.#tell(standing);
  }

  #drawWords({ phase, ms, up, near }) {
    const parts = this.#parts;
    const [heading, zero] = this.#words(phase);
    const shown = (phase === 'over' || (phase === 'open' && !up) ? '+' : '') + digits(ms, up);
    parts.hold.dataset.phase = phase;
    parts.hold.toggleAttribute('data-near', near);
    parts.digits.toggleAttribute('data-long', shown.length > 5);
    set(parts.phase, heading);
    set(parts.digits, shown);
    set(parts.zero, zero);
    set(parts.limits, this.#limits());
    const notes = this.notes();
    if (parts.notes.innerText !== notes.join('\n')) {
      parts.notes.replaceChildren(...notes.map((note) => make('li', '', note)));
    }
  }

  #limits() {
    const minimum = this.number('minimum-ms');
    const kept = minimum > 0 ? `at least ${spelt(minimum)}` : 'no minimum';
    return this.hasAttribute('maximum-ms')
      ? `Limits: ${kept}, at most ${spelt(this.number('maximum-ms'))}` : `Limits: ${kept}, no maximum`;
  }

  notes() {
    const notes = super.notes();
    if (linkState() === 'lost') {
      notes.push('No server: this clock runs on in the page.');
    }
    if (this.#awake.refused) {
      notes.push('This tablet cannot keep its screen awake: touch it now and then.');
    }
    if (!soundIsReady()) {
      notes.push('Sound is off until the screen is touched once.');
    }
    return notes;
  }

  /** The run as a bar from zero, with its limits as lines. */
  #drawRun() {
    const minimum = this.number('minimum-ms');
    const maximum = this.number('maximum-ms', 0);
    const whole = Math.max(minimum, maximum, 1) * 1.15;
    const share = (ms) => `${Math.min(100, (100 * ms) / whole)}%`;
    const { run, done } = this.#parts;
    done.style.width = share(this.since());
    const lines = [['minimum', minimum], ['maximum', maximum]].filter(([, ms]) => ms > 0).map(([name, ms]) => {
      const line = make('div', 'hold-run-limit');
      line.dataset.limit = name;
      line.style.left = share(ms);
      return line;
    });
    run.replaceChildren(done, ...lines);
  }

  #tell({ phase, near }) {
    if (near && this.#near !== phase) {
      this.#near = phase;
      play(phase === 'holding' ? 'before-minimum' : 'before-maximum');
    }
    if (phase === 'over' && performance.now() - this.#overrunTone > OVERRUN_TONE_EVERY_MS) {
      this.#overrunTone = performance.now();
      play('overrun');
    }
    if (phase !== this.#phase) {
      const first = this.#phase === undefined;
      this.#phase = phase;
      set(this.#parts.aloud, this.#words(phase).join(' '));
      if (!first) {
        this.raise('phase-changed', { phase });
      }
    }
  }
}

function set(element, text) {
  if (element.textContent !== text) {
    element.textContent = text;
  }
}

function sentence(words) {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

customElements.define('shop-hold-clock', ShopHoldClock);
