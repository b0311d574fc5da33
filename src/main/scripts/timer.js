// A time to keep: how long a task waits, or for how long a reading is there. The end is kept as a time of day, so that a
// phone that slept and a page that was opened again know what is left. A browser without storage keeps it in the page.
import { button, buzz, make } from './parts.js';
import { walk } from './walk.js';

const doc = document, NAME = 'rungbook-timer', RING_MS = 4000, RINGS = 15;
const chip = make('output', '', 'chip');
let waiting = null, clock = 0, rings = 0, voice = null, lock = null;

function store(value) {
  waiting = value;
  try { value ? localStorage.setItem(NAME, JSON.stringify(value)) : localStorage.removeItem(NAME); } catch { /* in the page alone */ }
}
function stored() {
  try { return JSON.parse(localStorage.getItem(NAME)); } catch { return null; }
}
// sound needs a press before it, so the voice is made when a timer is started
function speak(times) {
  try {
    voice = voice || new AudioContext();
    for (let i = 0; i < times; i++) {
      const tone = voice.createOscillator(), at = voice.currentTime + i * 0.4;
      tone.connect(voice.destination);
      tone.start(at);
      tone.stop(at + 0.2);
    }
  } catch { /* no sound: it is shown, and the phone vibrates */ }
}
function left() {
  return Math.max(0, Math.ceil((waiting.end - Date.now()) / 1000));
}
// minutes, also of hours, and seconds
function digits(seconds) {
  return Math.floor(seconds / 60) + ':' + String(seconds % 60).padStart(2, '0');
}
function run() {
  clearTimeout(clock);
  chip.hidden = !waiting;
  if (!waiting) return draw();
  const over = !left();
  chip.textContent = over ? waiting.words + ' over' : digits(left());
  chip.classList.toggle('over', over);
  draw();
  if (!over) { clock = setTimeout(run, 250); return; }
  if (rings++ >= RINGS) return;
  speak(3);
  buzz([400, 200, 400]);
  clock = setTimeout(run, RING_MS);
}
function mine(line) {
  return waiting && waiting.page === line.closest('.page').id;
}
function draw() {
  const line = doc.querySelector('.page.on .timer[data-k=wait]');
  if (!line) return;
  const words = line.dataset.w, rest = mine(line) ? left() : -1;
  line.querySelector('button').textContent = rest < 0 ? 'Start the ' + words : rest ? 'Stop, ' + digits(rest) + ' left' : words + ' are over';
  line.classList.toggle('over', !rest);
}
function end() {
  rings = RINGS;
  store(null);
  run();
}
function wait(line) {
  button('', line, () => {
    if (mine(line)) { end(); return; }
    rings = 0;
    speak(0);
    store({ end: Date.now() + line.dataset.s * 1000, words: line.dataset.w, page: line.closest('.page').id });
    run();
  });
}
// a few seconds that begin without asking: they are counted from a press, so that the eyes can stay on the meter
function lasts(line) {
  const press = button('Ready? Press when it begins', line, () => {
    clearTimeout(press.timer);
    press.style.setProperty('--s', line.dataset.s + 's');
    press.classList.remove('runs');
    press.getBoundingClientRect();
    press.classList.add('runs');
    press.textContent = line.dataset.w + ' from now';
    speak(1);
    buzz(100);
    press.timer = setTimeout(() => {
      press.classList.remove('runs');
      press.textContent = 'Over. Count again';
      speak(2);
      buzz([100, 80, 100]);
    }, line.dataset.s * 1000);
  });
}
// -- the screen stays on while a step is open
function awake() {
  if (!navigator.wakeLock || doc.hidden || lock && !lock.released) return;
  navigator.wakeLock.request('screen').then(held => { lock = held; }, () => { /* the phone decides */ });
}
doc.addEventListener('visibilitychange', () => { awake(); if (waiting) run(); });
addEventListener('storage', e => { if (e.key === NAME) { waiting = stored(); rings = 0; run(); } });
// a ring is answered by any press
addEventListener('pointerdown', () => { if (waiting && !left()) rings = RINGS; });
chip.onclick = () => {
  if (!left()) end();
  else if (walk.byId(waiting.page)) location.hash = encodeURIComponent(waiting.page);
};

export function timer(page) {
  if (!chip.parentNode) {
    doc.querySelector('.sofar').after(chip);
    waiting = stored();
  }
  const line = page.querySelector('.timer');
  if (line && !line.querySelector('button')) (line.dataset.k === 'wait' ? wait : lasts)(line);
  awake();
  run();
};
