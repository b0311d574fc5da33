// What the path walked so far changes at a step: which cautions are open, whether the dial moves, what has to be held.
import { fold } from './bars.js';
import { button, buzz, make } from './parts.js';
import { reading } from './reading.js';
import { timer } from './timer.js';
import { walk } from './walk.js';
import { where } from './where.js';

const HOLD_MS = 700, GAP = 8;

// of this tree
function pagesOf(way, tree) {
  return way.map(taken => taken.tree === tree && walk.pageOf(taken)).filter(Boolean);
}
function dial(page, walked) {
  const turn = page.querySelector('.turn'), last = walked.filter(one => one.dataset.q).pop();
  if (!turn) return;
  turn.hidden = !!last && last.dataset.q === page.dataset.q;
  turn.textContent = last ? 'Turn dial' : 'Set dial';
}
// -- at line voltage nothing is answered before a hand has held the button: a tap by accident does nothing. The ways out
// need no hold
function hold(page, dock) {
  let bar = dock.querySelector('.hold'), pressed = 0;
  if (!bar) {
    bar = button('', dock, e => { if (!e.detail) held(); });
    bar.className = 'hold';
    make('b', 'Hold to confirm', '', bar);
    make('span', 'I have done what it says above.', '', bar);
    dock.insertBefore(bar, dock.firstChild);
    bar.onpointerdown = () => {
      bar.classList.add('holding');
      pressed = setTimeout(held, HOLD_MS);
    };
    bar.onpointerup = bar.onpointerleave = bar.onpointercancel = () => {
      clearTimeout(pressed);
      bar.classList.remove('holding');
    };
    bar.oncontextmenu = () => false;
    dock.addEventListener('click', refuse, true);
    dock.addEventListener('focusin', refuse, true);
  }
  function held() {
    buzz(40);
    bar.hidden = true;
    dock.classList.remove('unheld');
    place(page);
  }
  function refuse(e) {
    if (!dock.classList.contains('unheld') || bar.contains(e.target) || e.target.closest('.out')) return;
    e.preventDefault();
    e.stopPropagation();
    if (e.type === 'focusin' && e.target.tagName === 'INPUT') bar.focus();
    bar.classList.add('asked');
    buzz([60, 60, 60]);
  }
  bar.hidden = false;
  bar.classList.remove('holding', 'asked');
  dock.classList.add('unheld');
  buzz([300, 100, 300]);
}
// -- the dock is as high as what to do leaves room for, and always shows its first way whole, or the bar to hold; the rest is a swipe away
// before the hold, what has to be held is what has to be in sight
function least(dock) {
  const first = dock.querySelector(dock.classList.contains('unheld') ? '.hold' : '.ways a');
  return first.getBoundingClientRect().bottom - dock.getBoundingClientRect().top + GAP;
}
function fits(dock, line) {
  return line.getBoundingClientRect().bottom + scrollY + least(dock) <= innerHeight;
}
function place(page) {
  const dock = page.querySelector('.dock'), high = innerHeight, line = page.querySelector('.measure');
  if (!dock) return;
  dock.classList.remove('loose');
  page.classList.remove('tight');
  dock.style.bottom = '';
  if (line && !fits(dock, line)) page.classList.add('tight');
  // cautions that are all new leave no room for an answer: it follows what to do, a swipe away
  const full = line && !fits(dock, line);
  const read = line ? line.getBoundingClientRect().bottom + scrollY : high / 2;
  const room = dock.classList.contains('typing') ? dock.offsetHeight : Math.max(least(dock), Math.min(high * 0.66, high - read - 2));
  const typing = dock.classList.contains('typing'), loose = room > (typing ? high - 60 : high * 0.7) || full && !typing;
  dock.classList.toggle('loose', loose);
  if (loose && typing) dock.scrollIntoView();
  if (!loose) dock.style.bottom = Math.min(0, room - dock.offsetHeight) + 'px';
}
// once a frame, however much was typed: each look at the layout costs a few milliseconds
let due = 0, told = null;
function soon(page, box) {
  told = box || told;
  due = due || requestAnimationFrame(() => {
    due = 0;
    place(page);
    if (told) told.scrollIntoView();
    told = null;
  });
}
export function step(page, way, typed) {
  const walked = pagesOf(way, walk.treeOf(page)).filter(one => one !== page), dock = page.querySelector('.dock');
  fold(page, walked);
  dial(page, walked);
  timer(page);
  where(page, way);
  if (!dock) return;
  if (page.dataset.r && !page.querySelector('.reading')) reading(page, dock, typed, box => { soon(page, box); });
  if (page.classList.contains('live-line')) hold(page, dock);
};
export { place };
