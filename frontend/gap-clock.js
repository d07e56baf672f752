/** <shop-gap-clock next reason run started-ms now-ms maximum-ms speed>: how long until the next step has to start. */
import { make } from './part.js';
import { digits, RunningClock } from './running-clock.js';
import { play } from './tones.js';

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

customElements.define('shop-gap-clock', ShopGapClock);
