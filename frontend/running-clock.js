/**
 * What hold and gap clocks share: the shop's elapsed time line, carried on in the page.
 *
 * The server says where its elapsed time line stood (`now-ms`, with a `run` that changes at each telling) and where
 * the hold started on it (`started-ms`). From then on the page counts with performance.now() times the shop's speed,
 * never with the wall clock, so a stepped clock or a dead network changes nothing. The heartbeat's `shop-elapsed`
 * puts a page that drifted, or a tablet that slept, right again. The server alone decides whether a hold was kept.
 */
import { Part } from './part.js';

const DRAW_MS = 200;
const DRIFT_MS = 300;
const SLEPT_MS = 2000;
const WARN_REAL_MS = 10000;
const WARN_SHARE = 0.25;

/** `ms` as 4:05 or 1:04:05; remaining time is rounded up, so that 0:00 means that it is really over. */
export function digits(ms, up) {
  const seconds = up ? Math.ceil(ms / 1000) : Math.floor(ms / 1000);
  const hours = Math.floor(seconds / 3600);
  const two = (value) => String(value).padStart(2, '0');
  const rest = `${hours > 0 ? two(Math.floor(seconds / 60) % 60) : Math.floor(seconds / 60)}:${two(seconds % 60)}`;
  return hours > 0 ? `${hours}:${rest}` : rest;
}

/** Spelt out: 5 min 00 s. */
export function spelt(ms) {
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
export class RunningClock extends Part {
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
    return this.slept ? ['The tablet slept: the time shown may be short until the server answers.'] : [];
  }
}
