// The page: a level or an exercise, the bench, the name of the fault, and what was found of the way.
import { bench, select } from './bench.js';
import { follow } from './follow.js';
import { button, make } from './parts.js';
import { qrPicture, results as resultsOf } from './results.js';
import { practiceOn } from './round.js';

const doc = document;
const data = JSON.parse(doc.getElementById('data').content.textContent), practice = practiceOn(data), names = practice.names;
const root = doc.getElementById('practice'), results = resultsOf(root.dataset.system, doc.querySelector('[name=rungbook-digest]').content);
const CODE = /^(\d{1,2})-(\d{1,9})-(\d{1,2})(?:-([\d.]+))?$/;
let exercise = null, round = null;

doc.getElementById('plain').hidden = true;
try {
  const light = doc.getElementById(':' + localStorage.getItem('rungbook-light'));
  if (light) light.checked = true;
  addEventListener('change', e => { if (e.target.name === 'light') localStorage.setItem('rungbook-light', e.target.value); });
} catch { /* no storage: the choice lasts as long as the page */ }

function screen(title) {
  doc.body.classList.remove('benching');
  root.textContent = '';
  const heading = make('h2', title, '', root);
  heading.tabIndex = -1;
  heading.focus();
  scrollTo(0, 0);
  return root;
}
function fresh() { return crypto.getRandomValues(new Uint32Array(1))[0] % 1000000000; }
// an exercise by its code: level, seed, rounds, and the faults that the teacher chose
function parsed(code) {
  const found = CODE.exec(code.trim());
  return found && { code: found[0], level: Math.min(10, Math.max(1, Number(found[1]))), seed: Number(found[2]),
    rounds: Math.max(1, Number(found[3])), faults: (found[4] || '').split('.').filter(Boolean).map(Number), next: 0 };
}
function faults() {
  const all = {};
  data.variants.forEach(v => { v.k.forEach(k => { if (k[0].length === 1) all[k[0][0]] = true; }); });
  return Object.keys(all).map(Number).sort((a, b) => names[a] < names[b] ? -1 : 1);
}
function begin(level, seed, chosen) {
  round = practice.deal(level, seed, chosen);
  const page = screen('Level ' + level + (exercise ? ', round ' + exercise.next + ' of ' + exercise.rounds : ''));
  make('p', round.tree ? 'The customer says: “' + round.tree[2] + '”' : 'The customer says that something is wrong.', 'says', page);
  if (round.tree) {
    const a = make('a', 'Follow the tree: ' + round.tree[1], '', make('p', '', '', page));
    a.href = round.tree[3];
    a.target = '_blank';
  }
  bench(practice, round, page, { name: ask });
}
function ask() {
  const page = screen('Name the fault'), all = faults(), options = ['choose'].concat(all.map(f => names[f]));
  const chosen = round.faults.map(() => 0);
  chosen.forEach((zero, i) => {
    select(chosen.length > 1 ? 'Fault ' + (i + 1) : 'What is wrong?', page, options, 0, at => { chosen[i] = at; });
  });
  const told = make('p', '', 'told', page);
  told.setAttribute('role', 'alert');
  button('That is it', page, () => {
    if (chosen.some(at => !at)) { told.textContent = 'Choose a fault first.'; return; }
    judge(chosen.map(at => all[at - 1]));
  });
  button('Back to the bench', page, () => {
    bench(practice, round, screen('Level ' + round.level), { name: ask });
  });
}
function judge(named) {
  round.leave();
  const right = round.faults.every(f => named.indexOf(f) >= 0);
  results.add({ level: round.level, seed: round.seed, exercise: exercise ? exercise.code : '', variant: data.forms[round.variant][0],
    faults: round.faults.map(word), named: named.map(word), right, minutes: round.minutes, walked: round.walked, unsafe: round.unsafe,
    way: round.way.map(w => w.words), started: round.started, ended: round.ended });
  const page = screen(right ? 'Found' : 'Not found');
  make('p', 'It was: ' + round.faults.map(word).join(' and ') + '.', right ? 'good' : 'bad', page);
  if (!right) make('p', 'You named: ' + named.map(word).join(' and ') + '.', '', page);
  if (data.forms[round.variant][0]) make('p', 'The system was of the variant ' + data.forms[round.variant][0] + '.', '', page);
  make('p', round.minutes + ' min of work, ' + round.walked + ' min of walking.', '', page);
  make('h3', 'Unsafe acts', '', page);
  if (round.unsafe.length) list(page, 'ul', round.unsafe, 'unsafe'); else make('p', 'None.', '', page);
  shortest(page);
  make('h3', 'Your way', '', page);
  list(page, 'ol', round.way.map(w => w.words + ' (' + (w.minutes + w.walked) + ' min)'), '');
  const tools = make('div', '', 'tools', page);
  if (exercise && exercise.next < exercise.rounds) button('Next round', tools, next); else button('Another one', tools, () => { exercise = null; begin(round.level, fresh(), []); });
  button('Levels and exercises', tools, front);
  results.show(make('div', '', 'results', page));
}
function word(fault) { return names[fault]; }
function list(inside, kind, all, name) {
  const box = make(kind, '', name, inside);
  all.forEach(words => { make('li', words, '', box); });
}
function shortest(page) {
  const best = follow(practice, round);
  make('h3', 'The shortest way of a tree', '', page);
  if (!best) { make('p', 'No tree here finds it in this installation.', '', page); return; }
  const a = make('a', best.tree[1], '', make('p', best.minutes + ' min, walking included: ', '', page));
  a.href = best.tree[3];
  list(page, 'ol', best.way.map(one => one.title + (one.words ? ': ' + one.words : '')), '');
}
function next() {
  exercise.next++;
  begin(exercise.level, exercise.seed + exercise.next, exercise.faults);
}
function front() {
  const page = screen('Choose a level');
  round = null;
  exercise = null;
  make('p', 'A fault is put into the circuit. Set the controls, open the panels, put the leads on, and name it. Nothing here can hurt you; what would on the job is counted.', '', page);
  const levels = make('div', '', 'levels', page);
  data.levels.forEach((words, i) => { button((i + 1) + '  ' + words, levels, () => { begin(i + 1, fresh(), []); }); });
  const more = make('details', '', '', page);
  make('summary', 'An exercise from your teacher', '', more);
  const box = make('input', '', '', make('label', 'Code of the exercise', 'field', more)), told = make('p', '', 'told', more);
  told.setAttribute('role', 'alert');
  button('Begin', more, () => { if (!take(box.value)) told.textContent = 'A code is like 3-8123-4: level, number, rounds. Ask your teacher for it.'; });
  teach(page);
  results.show(make('div', '', 'results', page));
}
function take(code) {
  exercise = parsed(code);
  if (exercise) next();
  return !!exercise;
}
function teach(page) {
  const more = make('details', '', '', page), all = faults(), chosen = {};
  make('summary', 'Set an exercise', '', more);
  let level = 0, rounds = 2;
  select('Level', more, data.levels.map((words, i) => (i + 1) + '  ' + words), level, i => { level = i; });
  select('Rounds', more, ['1', '2', '3', '4', '5', '6', '8', '10'], rounds, i => { rounds = i; });
  const only = make('details', '', '', more);
  make('summary', 'Only these faults', '', only);
  all.forEach(fault => {
    const label = make('label', '', 'pick', only), box = make('input', '', '', label);
    box.type = 'checkbox';
    box.onchange = () => { chosen[fault] = box.checked; };
    label.append(names[fault]);
  });
  const out = make('div', '', '', more);
  button('Make the exercise', more, function () {
    const faultsChosen = all.filter(f => chosen[f]);
    const code = [level + 1, fresh(), [1, 2, 3, 4, 5, 6, 8, 10][rounds]].concat(faultsChosen.length ? [faultsChosen.join('.')] : []).join('-');
    const link = location.href.split('#')[0] + '#' + code, isWeb = /^https?:$/.test(location.protocol);
    out.textContent = '';
    make('p', 'Code: ', '', out).appendChild(make('code', code));
    if (isWeb) {
      const a = make('a', link, '', make('p', '', '', out));
      a.href = link;
    } else make('p', 'Your class opens its own copy of this file and types the code in.', '', out);
    const words = isWeb && link.length <= 400 ? link : code;
    if (words.length <= 400) qrPicture(words, 'the exercise', out);
  });
  more.appendChild(out);
}
addEventListener('hashchange', () => { take(decodeURIComponent(location.hash.slice(1))); });
if (!take(decodeURIComponent(location.hash.slice(1)))) front();
