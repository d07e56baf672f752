/**
 * The tablet's camera with an aiming frame.
 *
 * What is inside the frame is read by the browser's own BarcodeDetector where there is one, else sent to the server
 * about four times a second: POST image/jpeg of the frame's inside (at most 960 px wide, 250 kB), with the CSRF
 * header that the server handed in; it answers JSON {text, symbology}, or 204 where nothing was read. Nothing is
 * sent anywhere else. The camera stops when the sheet is closed or the page is hidden.
 */
import { button, make } from './part.js';

const FORMATS = ['data_matrix', 'qr_code', 'code_128', 'code_39'];
const LOOK_EVERY_MS = 250;
const FRAME_WIDTH_MAX = 960;
const FRAME_BYTES_MAX = 250_000;

export class CameraSheet {
  #target;
  #read;
  #video = make('video');
  #aim = make('i');
  #says = make('p', 'camera-says', 'Starting the camera…');
  #sheet = make('dialog', 'shop-sheet');
  #canvas = document.createElement('canvas');
  #stream;
  #open = false;

  /** @param target {url, csrfHeader, csrfToken} of the server's reader; @param read called with what was read */
  constructor(target, read) {
    this.#target = target;
    this.#read = read;
  }

  /** Shows the sheet and starts the camera. */
  async open() {
    this.#build();
    this.#open = true;
    document.addEventListener('visibilitychange', this.#hidden);
    try {
      await this.#start();
    } catch (fault) {
      this.#say(reason(fault));
      return;
    }
    this.#say('Hold the label inside the frame, so that it fills most of it.');
    await this.#look();
  }

  #build() {
    this.#says.setAttribute('role', 'status');
    this.#sheet.dataset.scan = 'camera';
    this.#sheet.setAttribute('aria-label', 'Scan with the camera');
    this.#video.muted = true;
    this.#video.playsInline = true;
    this.#sheet.append(make('h2', '', 'Scan with the camera'),
      make('div', 'camera-view', this.#video, make('div', 'camera-aim', this.#aim)), this.#says,
      make('div', 'sheet-actions', button('Close', '', () => this.#sheet.close())));
    this.#sheet.addEventListener('close', () => this.#stop());
    document.body.append(this.#sheet);
    this.#sheet.showModal();
  }

  async #start() {
    if (!window.isSecureContext || !navigator.mediaDevices?.getUserMedia) {
      throw new DOMException('', 'InsecureError');
    }
    this.#stream = await navigator.mediaDevices.getUserMedia({ audio: false,
      video: { facingMode: { ideal: 'environment' }, width: { ideal: 1920 }, height: { ideal: 1080 } } });
    if (!this.#open) {
      this.#halt();
      return;
    }
    this.#video.srcObject = this.#stream;
    await this.#video.play();
  }

  async #look() {
    const detector = await ownDetector();
    while (this.#open) {
      const started = performance.now();
      const text = await this.#readOnce(detector);
      if (text && this.#open) {
        this.#sheet.close();
        this.#read(text);
        return;
      }
      await new Promise((go) => { setTimeout(go, Math.max(0, LOOK_EVERY_MS - (performance.now() - started))); });
    }
  }

  async #readOnce(detector) {
    if (this.#video.videoWidth === 0) {
      return undefined;
    }
    this.#cut();
    try {
      return detector ? (await detector.detect(this.#canvas))[0]?.rawValue : await this.#ask();
    } catch (fault) {
      this.#say('The picture could not be read just now. Trying again.');
      return undefined;
    }
  }

  /** Copies the inside of the aiming frame into the canvas. */
  #cut() {
    const video = this.#video.getBoundingClientRect();
    const aim = this.#aim.getBoundingClientRect();
    const scale = Math.min(video.width / this.#video.videoWidth, video.height / this.#video.videoHeight);
    const left = video.left + (video.width - this.#video.videoWidth * scale) / 2;
    const top = video.top + (video.height - this.#video.videoHeight * scale) / 2;
    const width = aim.width / scale;
    const height = aim.height / scale;
    const shrink = Math.min(1, FRAME_WIDTH_MAX / width);
    this.#canvas.width = Math.round(width * shrink);
    this.#canvas.height = Math.round(height * shrink);
    this.#canvas.getContext('2d', { willReadFrequently: true }).drawImage(this.#video, (aim.left - left) / scale,
      (aim.top - top) / scale, width, height, 0, 0, this.#canvas.width, this.#canvas.height);
  }

  async #ask() {
    const body = await jpeg(this.#canvas);
    const headers = { 'Content-Type': 'image/jpeg' };
    if (this.#target.csrfHeader) {
      headers[this.#target.csrfHeader] = this.#target.csrfToken;
    }
    const answer = await fetch(this.#target.url, { method: 'POST', headers, body, credentials: 'same-origin',
      signal: AbortSignal.timeout(4000) });
    if (!answer.ok) {
      throw new Error(String(answer.status));
    }
    return answer.status === 204 ? undefined : (await answer.json()).text;
  }

  #say(words) {
    this.#says.textContent = words;
  }

  #hidden = () => document.visibilityState === 'hidden' && this.#sheet.close();

  #stop() {
    this.#open = false;
    document.removeEventListener('visibilitychange', this.#hidden);
    this.#halt();
    this.#sheet.remove();
  }

  #halt() {
    this.#stream?.getTracks().forEach((track) => track.stop());
    this.#stream = undefined;
  }
}

async function ownDetector() {
  if (!('BarcodeDetector' in window)) {
    return undefined;
  }
  const known = await window.BarcodeDetector.getSupportedFormats();
  return FORMATS.every((format) => known.includes(format))
    ? new window.BarcodeDetector({ formats: FORMATS }) : undefined;
}

async function jpeg(canvas) {
  for (const quality of [0.85, 0.6]) {
    const body = await new Promise((done) => { canvas.toBlob(done, 'image/jpeg', quality); });
    if (body && body.size <= FRAME_BYTES_MAX) {
      return body;
    }
  }
  throw new Error('the frame is too large');
}

/** Why there is no picture, and what to do instead. */
function reason(fault) {
  const words = {
    InsecureError: 'The camera works only where the shop is opened with https, or on the server itself.',
    NotAllowedError: 'This browser was told not to use the camera. Allow it in the browser’s settings.',
    NotFoundError: 'This tablet has no camera.',
    NotReadableError: 'The camera is in use by something else on this tablet. Close that first.',
  };
  return `${words[fault.name] ?? 'The camera did not start.'} Use the hand scanner, or type the label.`;
}
