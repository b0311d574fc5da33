// Small parts that the scripts of a pack share.
const doc = document;

function make(tag, words, kind, inside) {
  const element = doc.createElement(tag);
  if (words) element.textContent = words;
  if (kind) element.className = kind;
  if (inside) inside.appendChild(element);
  return element;
}
function button(words, inside, act) {
  const b = make('button', words, '', inside);
  b.type = 'button';
  b.onclick = act;
  return b;
}
// a phone that cannot vibrate stays quiet, and so does a page that nobody has touched yet
function buzz(pattern) {
  if (navigator.vibrate && navigator.userActivation && navigator.userActivation.hasBeenActive) navigator.vibrate(pattern);
}
function ways(page) {
  return [].slice.call(page.querySelectorAll('.ways a'));
}
export { make, button, buzz, ways };
