/**
 * <shop-hold-clock> and <shop-gap-clock>: a hold or a gap, counted in the page.
 *
 * The server says where its elapsed time line stood (`now-ms`, with a `run` that changes at each telling) and where
 * the hold started on it (`started-ms`). From then on the page counts with performance.now() times the shop's speed,
 * never with the wall clock, so a stepped clock or a dead network changes nothing. The heartbeat's `shop-elapsed`
 * puts a page that drifted, or a tablet that slept, right again. The server alone decides whether a hold was kept.
 */
import { linkState } from './heartbeat.js';
import { make, Part } from './part.js';
import { play, soundIsReady } from './tones.js';

const DRAW_MS = 200;
const DRIFT_MS = 300;
const SLEPT_MS = 2000;
const WARN_REAL_MS = 10000;
const WARN_SHARE = 0.25;
const OVERRUN_TONE_EVERY_MS = 15000;

/** `ms` as 4:05 or 1:04:05; remaining time is rounded up, so that 0:00 means that it is really over. */
export function digits(ms, up) {
  const seconds = up ? Math.ceil(ms / 1000) : Math.floor(ms / 1000);
  const hours = Math.floor(seconds / 3600);
  const two = (value) => String(value).padStart(2, '0');
  const rest = `${hours > 0 ? two(Math.floor(seconds / 60) % 60) : Math.floor(seconds / 60)}:${two(seconds % 60)}`;
  return hours > 0 ? `${hours}:${rest}` : rest;
}

/** Seconds spelt out: 5 min 00 s. */
function spelt(ms) {
  const seconds = Math.round(ms / 1000);
  const hours = Math.floor(seconds / 3600);
  const minutes = Math.floor(seconds / 60) % 60;
  const two = (value) => String(value).padStart(2, '0');
  if (hours > 0) {
    return `${hours} h ${two(minutes)} min`;
  }
  return minutes > 0 ? `${minutes} min ${two(seconds % 60)} s` : `${seconds} s`;
}

/** A clock that runs on the shop's elapsed time line. */
class RunningClock extends Part {
  #anchor = { elapsed: 0, at: 0 };
  #timer;
  #lastBeat;
  slept = false;

  #hearElapsed = ({ detail }) => {
    const told = detail.elapsedMillis + (performance.now() - detail.at) * this.speed;
    if (Math.abs(told - this.shopNow()) > DRIFT_MS * this.speed) {
      this.#anchor = { elapsed: told, at: performance.now() };
    }
    this.slept = false;
    this.redraw();
  };

  #hearLink = () => this.redraw();

  connectedCallback() {
    window.addEventListener('shop-elapsed', this.#hearElapsed);
    window.addEventListener('shop-link', this.#hearLink);
    this.#timer = setInterval(() => this.#tick(), DRAW_MS);
    super.connectedCallback();
  }

  disconnectedCallback() {
    window.removeEventListener('shop-elapsed', this.#hearElapsed);
    window.removeEventListener('shop-link', this.#hearLink);
    clearInterval(this.#timer);
  }

  attributeChangedCallback(name) {
    if (name === 'run') {
      this.#anchor = { elapsed: this.number('now-ms'), at: performance.now() };
      this.slept = false;
    }
    super.attributeChangedCallback();
  }

  get speed() {
    return this.number('speed', 1);
  }

  /** The shop's elapsed time line now, in shop milliseconds. */
  shopNow() {
    return this.#anchor.elapsed + (performance.now() - this.#anchor.at) * this.speed;
  }

  /** Shop milliseconds since the start. */
  since() {
    return Math.max(0, this.shopNow() - this.number('started-ms'));
  }

  /** A sleeping tablet may stop performance.now(); the wall clock serves only to notice that, never to count. */
  #tick() {
    const beatNow = { monotonic: performance.now(), wall: Date.now() };
    if (this.#lastBeat) {
      const missing = beatNow.wall - this.#lastBeat.wall - (beatNow.monotonic - this.#lastBeat.monotonic);
      this.slept ||= missing > SLEPT_MS;
    }
    this.#lastBeat = beatNow;
    this.draw();
  }

  /** How long before a limit of `span` shop milliseconds its tone comes: ten real seconds, or a quarter. */
  warning(span) {
    return Math.min(WARN_REAL_MS * this.speed, span * WARN_SHARE);
  }

  /** What has to be known about the clock itself. */
  notes() {
    const notes = [];
    if (linkState() === 'lost') {
      notes.push('No server: this clock runs on in the page.');
    }
    if (this.slept) {
      notes.push('The tablet slept: the time shown may be short until the server answers.');
    }
    return notes;
  }
}

/** Keeps the screen awake while a hold runs, where the browser can. */
class Awake {
  #lock;
  #wanted = false;
  refused = false;

  #again = () => document.visibilityState === 'visible' && this.#take();

  keep() {
    if (!this.#wanted) {
      this.#wanted = true;
      document.addEventListener('visibilitychange', this.#again);
      this.#take();
    }
  }

  release() {
    this.#wanted = false;
    document.removeEventListener('visibilitychange', this.#again);
    this.#lock?.release().catch(() => undefined);
    this.#lock = undefined;
  }

  async #take() {
    try {
      const lock = await navigator.wakeLock.request('screen');
      this.refused = false;
      if (this.#wanted) {
        this.#lock = lock;
      } else {
        await lock.release();
      }
    } catch (unavailable) {
      this.refused = true;
    }
  }
}

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
    return {
      holding: [`${this.text('label')}: hold, left until the minimum`, `At zero: ${this.text('at-minimum')}`],
      open: limited
        ? [`${this.text('label')}: minimum kept, left until the maximum`,
          `${this.text('at-minimum')} At zero: ${this.text('at-maximum')}`]
        : [`${this.text('label')}: minimum kept, held longer by`, this.text('at-minimum')],
      over: [`${this.text('label')}: OVER THE MAXIMUM by`, this.text('at-maximum')],
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

class ShopGapClock extends RunningClock {
  static observedAttributes = ['run', 'started-ms', 'maximum-ms', 'speed', 'next', 'reason'];
  #warned = false;
  #broken;

  draw() {
    const left = this.number('maximum-ms') - this.since();
    const over = left <= 0;
    const words = over ? `Gap broken: ${this.text('next')} should have started` : `${this.text('next')} starts within`;
    const gap = make('div', 'gap', make('span', '', words),
      make('span', 'gap-digits', over ? `+${digits(-left, false)}` : digits(left, true)),
      make('span', '', over ? `ago. ${this.text('reason')}` : this.text('reason')),
      ...this.notes().map((note) => make('strong', '', note)));
    gap.dataset.phase = over ? 'over' : 'open';
    this.replaceChildren(gap);
    this.#tell(left, over);
  }

  #tell(left, over) {
    if (!over && !this.#warned && left <= this.warning(this.number('maximum-ms'))) {
      this.#warned = true;
      play('before-maximum');
    }
    if (over && this.#broken === false) {
      play('overrun');
      this.raise('phase-changed', { phase: 'over' });
    }
    this.#broken = over;
  }
}

function set(element, text) {
  if (element.textContent !== text) {
    element.textContent = text;
  }
}

customElements.define('shop-hold-clock', ShopHoldClock);
customElements.define('shop-gap-clock', ShopGapClock);
