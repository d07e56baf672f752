/*
 * How long until something: "in 12 min", "in 3 min 05 s", "4 min ago". Counts on by itself on monotonic time from the
 * last telling of the server; what is left is rounded down, to be safe.
 */
const TEN_MINUTES = 600;

export function words(leftMs) {
  const past = leftMs < 0;
  const total = Math.floor(Math.abs(leftMs) / 1000);
  if (total === 0) {
    return 'now';
  }
  const days = Math.floor(total / 86400);
  const hours = Math.floor((total % 86400) / 3600);
  const minutes = Math.floor((total % 3600) / 60);
  const seconds = total % 60;
  const two = (number) => String(number).padStart(2, '0');
  let length = `${seconds} s`;
  if (days > 0) {
    length = `${days} d ${hours} h`;
  } else if (hours > 0) {
    length = `${hours} h ${two(minutes)} min`;
  } else if (total >= TEN_MINUTES) {
    length = `${minutes} min`;
  } else if (minutes > 0) {
    length = `${minutes} min ${two(seconds)} s`;
  }
  return past ? `${length} ago` : `in ${length}`;
}

class ShopLeft extends HTMLElement {
  static observedAttributes = ['run'];

  connectedCallback() {
    this.tell();
    this.timer = setInterval(() => this.paint(), 1000);
  }

  disconnectedCallback() {
    clearInterval(this.timer);
  }

  attributeChangedCallback() {
    this.tell();
  }

  tell() {
    this.leftMs = Number(this.getAttribute('left-ms'));
    this.speed = Number(this.getAttribute('speed') || 1);
    this.toldAt = performance.now();
    this.paint();
  }

  paint() {
    const left = this.leftMs - (performance.now() - this.toldAt) * this.speed;
    const said = words(left);
    if (this.textContent !== said) {
      this.textContent = said;
    }
    this.toggleAttribute('over', left < 0);
  }
}

if (!customElements.get('shop-left')) {
  customElements.define('shop-left', ShopLeft);
}
