// Search by complaint in a list of trees.
const doc = document, field = doc.createElement('label'), buttons = doc.createElement('div');
const input = doc.createElement('input'), none = doc.createElement('p'), list = doc.querySelector('.trees');
field.className = 'field';
field.textContent = 'What does the customer say, or what do you see?';
input.type = 'search';
field.appendChild(input);
none.setAttribute('role', 'status');
buttons.className = 'symptoms';
buttons.setAttribute('role', 'group');
buttons.setAttribute('aria-label', 'Complaints');
list.before(buttons, field, none);

// -- words and their stems, as the server's SearchWord makes them
function withoutE(word) {
  return word.length > 3 && /e$/.test(word) ? word.slice(0, -1) : word;
}
function stem(word) {
  for (const ending of ['ing', 'ed', 'es', 's']) {
    const end = word.length - ending.length;
    const rest = word.slice(end) === ending && !/ss$/.test(word) ? word.slice(0, Math.max(0, end)) : '';
    if (rest.length >= 3 && /[aeiouy]/.test(rest)) return withoutE(rest.replace(/([bdgmnprt])\1$/, '$1'));
  }
  return withoutE(word);
}
function wordsOf(text) {
  return text.toLowerCase().normalize('NFKD').replace(/[\p{M}'\u2019]+/gu, '')
    .replace(/(^|[^\p{L}\p{N}])(\p{L})\/(\p{L})(?![\p{L}\p{N}])/gu, '$1$2$3')
    .split(/[^\p{L}\p{N}]+/u).filter(Boolean).map(word => ({ word: word, stem: stem(word) }));
}
function packed(words) {
  return (words || '').split(' ').filter(Boolean).map(pair => {
    const parts = pair.split('/');
    return { word: parts[0], stem: parts[1] || parts[0] };
  });
}
function isIn(asked, said) {
  return said.some(one => one.stem === asked.stem || asked.word.length > 2 && one.word.indexOf(asked.word) === 0);
}
// one letter too many, missing, other, or exchanged with its neighbor
function isOneAway(one, other) {
  const shorter = Math.min(one.length, other.length);
  let begin = 0, end = 0;
  while (begin < shorter && one[begin] === other[begin]) begin++;
  while (end < shorter - begin && one[one.length - 1 - end] === other[other.length - 1 - end]) end++;
  const left = one.length - begin - end, right = other.length - begin - end;
  return Math.max(left, right) === 1
    || left === 2 && right === 2 && one[begin] === other[begin + 1] && one[begin + 1] === other[begin];
}
function isOneLetterOffIn(asked, said) {
  return asked.word.length >= 5 && said.some(one => isOneAway(asked.word, one.word));
}
// a word of the title counts most, one of a step least
function score(asked, entry) {
  return asked.reduce((total, word) => total + (isIn(word, entry.titled) ? 5 : isIn(word, entry.said) ? 4 : isIn(word, entry.near) ? 3
    : isOneLetterOffIn(word, entry.said) || isOneLetterOffIn(word, entry.near) ? 2 : isIn(word, entry.steps) ? 1 : 0), 0);
}
const leftOut = list.dataset.leftOut.split(' ');
function telling(words) {
  const some = words.filter(one => leftOut.indexOf(one.word) < 0);
  return some.length ? some : words;
}

const entries = [].map.call(list.children, li => ({ li: li, title: li.querySelector('b').textContent,
  titled: packed(li.dataset.title), said: packed(li.dataset.said), near: packed(li.dataset.near),
  steps: packed(li.dataset.steps), symptoms: li.dataset.symptoms.split(' ') }));
let pressed = null;
function show() {
  const asked = telling(wordsOf(input.value));
  let found = entries;
  if (pressed) found = entries.filter(entry => entry.symptoms.indexOf(pressed.value) >= 0);
  if (asked.length) {
    found.forEach(entry => { entry.score = score(asked, entry); });
    const best = Math.max(...found.map(entry => entry.score));
    found = found.filter(entry => entry.score && entry.score * 2 >= best)
      .sort((one, other) => other.score - one.score || (one.title < other.title ? -1 : +(one.title > other.title)));
  }
  entries.forEach(entry => { entry.li.hidden = found.indexOf(entry) < 0; });
  found.forEach(entry => { list.appendChild(entry.li); });
  none.textContent = asked.length || pressed ? found.length + ' of ' + entries.length : '';
}
function press(button) {
  pressed = pressed === button ? null : button;
  [].forEach.call(buttons.children, one => { one.setAttribute('aria-pressed', one === pressed); });
  show();
}
list.dataset.symptoms.split(';').forEach((words, index) => {
  if (!entries.some(entry => entry.symptoms.indexOf(String(index)) >= 0)) return;
  const button = doc.createElement('button');
  button.type = 'button';
  button.value = index;
  button.textContent = words;
  button.setAttribute('aria-pressed', 'false');
  button.onclick = () => { press(button); };
  buttons.appendChild(button);
});
input.oninput = show;
