/** Keeps the screen awake while a hold runs, where the browser can. */
export class Awake {
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
