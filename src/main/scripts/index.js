// The light of the index, and a copy on the phone when the folder comes from a server.
import './search.js';

const doc = document, told = doc.createElement('p'), newer = doc.createElement('p');
try {
  const light = doc.getElementById(':' + localStorage.getItem('rungbook-light'));
  if (light) light.checked = true;
  addEventListener('change', e => { if (e.target.name === 'light') localStorage.setItem('rungbook-light', e.target.value); });
} catch { /* no storage: the choice lasts as long as the page */ }

// says what of the library is on the phone, and whether a newer edition waits; what is heard of files may come after the last of
// them was kept
let settled = false;
function say(words) { told.textContent = words; }
function kept(worker, done) {
  const line = new MessageChannel();
  line.port1.onmessage = e => { done(e.data); };
  worker.postMessage('state', [line.port2]);
}
function show(worker) {
  kept(worker, function (state) {
    say(state.kept + ' of ' + state.of + ' files kept on this phone, edition ' + state.edition + '.'
      + (state.kept === state.of ? ' It opens without a signal.' : ' Open this page again with a signal to fetch the others.'));
  });
}
function offer(worker) {
  const take = doc.createElement('button');
  take.type = 'button';
  take.textContent = 'Take it now';
  take.addEventListener('click', function () {
    navigator.serviceWorker.addEventListener('controllerchange', function () { location.reload(); });
    worker.postMessage('take');
  });
  newer.textContent = 'A newer edition is here. Take it after this job: it takes the place of the pages that you read now. ';
  newer.appendChild(take);
}
function follow(registration) {
  const coming = registration.installing;
  if (registration.active) show(registration.active);
  if (registration.waiting) offer(registration.waiting);
  settled = !coming;
  if (coming) {coming.addEventListener('statechange', function () {
    settled = true;
    if (coming.state === 'activated') show(coming);
    if (coming.state === 'installed' && registration.active) offer(coming);
  });}
}
// while a new edition is fetched, the line above it still says what is kept of the old one
function heard(data, hasOld) {
  const line = hasOld ? newer : told;
  if (data.got && !settled) line.textContent = (hasOld ? 'A newer edition is being fetched: ' : 'Being kept on this phone: ') + data.got + ' of ' + data.of + ' files.';
  if (data.notKept) {
    line.textContent = (hasOld ? 'A newer edition was not kept, because ' : 'Not kept on this phone, because ') + data.notKept + '. '
      + (hasOld ? 'The one that is here stays whole. ' : '') + 'It is tried again when you next open this page with a signal.';
  }
}
if (/^https?:$/.test(location.protocol) && navigator.serviceWorker) {
  const link = doc.createElement('link'), workers = navigator.serviceWorker;
  link.rel = 'manifest';
  link.href = 'manifest.webmanifest';
  doc.head.appendChild(link);
  const main = doc.querySelector('main');
  [told, newer].forEach(function (line) { line.setAttribute('role', 'status'); });
  main.appendChild(told);
  main.insertBefore(newer, main.firstChild); // seen before a tree is opened
  workers.addEventListener('message', e => { heard(e.data, !!workers.controller); });
  workers.register('sw.js', { updateViaCache: 'none' }).then(function (registration) {
    follow(registration);
    registration.addEventListener('updatefound', function () { follow(registration); });
    if (navigator.storage && navigator.storage.persist) navigator.storage.persist().catch(() => false);
  }).catch(function () {
    if (!workers.controller && !told.textContent) say('This browser keeps no copy of the library. Save the packs that you need.');
  });
}
