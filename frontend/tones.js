/**
 * Tones and vibration, made in code. Each meaning has its own rhythm, so that it is told apart in noise and by
 * someone who cannot tell pitches apart: accepted rises once, refused falls twice, before the minimum two short
 * knocks, before the maximum four quick ones that climb, overrun a see-saw.
 *
 * A browser lets a page sound only after it was touched once; {@link soundIsReady} says whether it was.
 */
const TONES = {
  accepted: { wave: 'triangle', notes: [[784, 90], [1175, 180]], buzz: [60] },
  refused: { wave: 'square', notes: [[330, 220], [0, 60], [220, 380], [0, 120], [330, 220], [0, 60], [220, 380]],
    buzz: [250, 100, 250, 100, 400] },
  'before-minimum': { wave: 'triangle', notes: [[988, 90], [0, 110], [988, 90]], buzz: [80, 100, 80] },
  'before-maximum': { wave: 'square', notes: [[659, 90], [0, 50], [784, 90], [0, 50], [932, 90], [0, 50], [1109, 140]],
    buzz: [100, 50, 100, 50, 100, 50, 200] },
  overrun: { wave: 'sawtooth', notes: [[440, 250], [311, 250], [440, 250], [311, 250], [440, 250], [311, 350]],
    buzz: [400, 100, 400, 100, 400] },
};
const LOUDNESS = 0.5;

let context;

function audio() {
  const Context = window.AudioContext || window.webkitAudioContext;
  if (!context && Context) {
    context = new Context();
  }
  return context;
}

for (const touch of ['pointerdown', 'keydown']) {
  window.addEventListener(touch, () => {
    const ready = audio();
    if (ready && ready.state === 'suspended') {
      ready.resume().catch(() => undefined);
    }
  }, { capture: true, passive: true });
}

/** Whether the page may sound now. */
export function soundIsReady() {
  return Boolean(context && context.state === 'running');
}

/** Sounds and vibrates `name`, one of the keys of TONES; where the tablet can do neither, nothing happens. */
export function play(name) {
  const tone = TONES[name];
  window.dispatchEvent(new CustomEvent('shop-tone', { detail: { name } }));
  if (navigator.vibrate && navigator.userActivation?.hasBeenActive) {
    navigator.vibrate(tone.buzz);
  }
  if (soundIsReady()) {
    sound(tone);
  }
}

function sound(tone) {
  let at = context.currentTime;
  for (const [hertz, millis] of tone.notes) {
    const until = at + millis / 1000;
    if (hertz > 0) {
      note(tone.wave, hertz, at, until);
    }
    at = until;
  }
}

/** One note with soft edges, so that it does not click. */
function note(wave, hertz, from, until) {
  const source = new OscillatorNode(context, { type: wave, frequency: hertz });
  const gain = new GainNode(context, { gain: 0 });
  gain.gain.setValueAtTime(0, from);
  gain.gain.linearRampToValueAtTime(LOUDNESS, from + 0.01);
  gain.gain.setValueAtTime(LOUDNESS, until - 0.015);
  gain.gain.linearRampToValueAtTime(0, until);
  source.connect(gain).connect(context.destination);
  source.start(from);
  source.stop(until);
}
