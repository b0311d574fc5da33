// The light of the index, and a copy on the phone when the folder comes from a server.
import './search.js';

const doc = document, told = doc.createElement('p');
try {
  const light = doc.getElementById(':' + localStorage.getItem('rungbook-light'));
  if (light) light.checked = true;
  addEventListener('change', e => { if (e.target.name === 'light') localStorage.setItem('rungbook-light', e.target.value); });
} catch { /* no storage: the choice lasts as long as the page */ }
if (/^https?:$/.test(location.protocol) && navigator.serviceWorker) {
  const link = doc.createElement('link');
  link.rel = 'manifest';
  link.href = 'manifest.webmanifest';
  doc.head.appendChild(link);
  told.setAttribute('role', 'status');
  doc.querySelector('main').appendChild(told);
  navigator.serviceWorker.register('sw.js').then(() => navigator.serviceWorker.ready).then(function () {
    told.textContent = 'The whole library is on this phone now. It opens without a signal.';
  }).catch(() => {
    told.textContent = 'This browser keeps no copy of the library. Save the packs that you need.';
  });
}
