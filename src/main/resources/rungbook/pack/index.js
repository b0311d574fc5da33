// Search by complaint, and a copy on the phone when the folder comes from a server.
(function () {
'use strict';
var doc = document, items = [].slice.call(doc.querySelectorAll('.trees li')), told = doc.createElement('p'), field = doc.createElement('label');
var input = doc.createElement('input'), none = doc.createElement('p');
field.className = 'field';
field.textContent = 'What does the customer say, or what do you see?';
input.type = 'search';
field.appendChild(input);
none.setAttribute('role', 'status');
var list = doc.querySelector('.trees');
list.parentNode.insertBefore(field, list);
list.parentNode.insertBefore(none, list);
input.oninput = function () {
  var words = input.value.toLowerCase().split(/\s+/).filter(Boolean), left = 0;
  items.forEach(function (li) {
    var text = li.textContent.toLowerCase();
    li.hidden = !words.every(function (w) { return text.indexOf(w) >= 0; });
    left += li.hidden ? 0 : 1;
  });
  none.textContent = words.length ? left + ' of ' + items.length : '';
};
try {
  var light = doc.getElementById(':' + localStorage.getItem('rungbook-light'));
  if (light) light.checked = true;
  doc.querySelector('.light').onchange = function (e) { localStorage.setItem('rungbook-light', e.target.value); };
} catch (e) { /* no storage: the choice lasts as long as the page */ }
if (/^https?:$/.test(location.protocol) && navigator.serviceWorker) {
  var link = doc.createElement('link');
  link.rel = 'manifest';
  link.href = 'manifest.webmanifest';
  doc.head.appendChild(link);
  told.setAttribute('role', 'status');
  doc.querySelector('main').appendChild(told);
  navigator.serviceWorker.register('sw.js').then(function () { return navigator.serviceWorker.ready; }).then(function () {
    told.textContent = 'The whole library is on this phone now. It opens without a signal.';
  }).catch(function () {
    told.textContent = 'This browser keeps no copy of the library. Save the packs that you need.';
  });
}
})();
