/**
 * Asks the server every two seconds whether it is there and tells everyone on the page.
 *
 * The framework itself notices a dead server only when somebody touches the page, which is too late beside a bath.
 * Events on window: `shop-link` {state: 'linked' | 'lost' | 'back'}; `shop-elapsed` {elapsedMillis, at}, the shop's
 * elapsed time line as the server told it and the page's monotonic time (performance.now) it belongs to.
 * A changed `Shop-Boot` header means that the server was started anew: the page loads itself again.
 */
const BEAT_MS = 2000;
const TIME_OUT_MS = 2000;
const BACK_SHOWN_MS = 4000;

let state = 'linked';
let boot;
let url;

/** 'linked', 'lost', or for a few seconds after a loss 'back'. */
export function linkState() {
  return state;
}

/**
 * Whether something may be sent to the server now. Where not, the page is told (`shop-not-taken` on window): the
 * framework would keep it and send it when the server is back, and a signature would count at a time that it was not
 * given for.
 */
export function mayAct() {
  if (state !== 'lost') {
    return true;
  }
  window.dispatchEvent(new CustomEvent('shop-not-taken'));
  return false;
}

/** Starts beating against `aliveUrl`; further calls change nothing. */
export function beat(aliveUrl) {
  if (url) {
    return;
  }
  url = aliveUrl;
  window.addEventListener('online', () => ask());
  window.addEventListener('offline', () => become('lost'));
  document.addEventListener('visibilitychange', () => document.visibilityState === 'visible' && ask());
  tick();
}

async function tick() {
  await ask();
  setTimeout(tick, BEAT_MS);
}

async function ask() {
  const sent = performance.now();
  try {
    const answer = await fetch(url, { cache: 'no-store', credentials: 'same-origin', redirect: 'error',
      signal: AbortSignal.timeout(TIME_OUT_MS) });
    if (answer.ok) {
      heard(answer, (sent + performance.now()) / 2);
    } else {
      become('lost');
    }
  } catch (unreachable) {
    become('lost');
  }
}

function heard(answer, at) {
  const told = answer.headers.get('Shop-Boot');
  if (boot && told && told !== boot) {
    window.location.reload();
    return;
  }
  boot = told ?? boot;
  const elapsed = answer.headers.get('Shop-Elapsed-Millis');
  if (elapsed !== null) {
    window.dispatchEvent(new CustomEvent('shop-elapsed', { detail: { elapsedMillis: Number(elapsed), at } }));
  }
  if (state === 'lost') {
    become('back');
    setTimeout(() => state === 'back' && become('linked'), BACK_SHOWN_MS);
  }
}

function become(next) {
  if (state === next) {
    return;
  }
  state = next;
  if (window.Vaadin?.connectionState) {
    window.Vaadin.connectionState.state = next === 'lost' ? 'reconnecting' : 'connected';
  }
  window.dispatchEvent(new CustomEvent('shop-link', { detail: { state } }));
}
