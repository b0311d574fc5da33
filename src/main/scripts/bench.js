// The bench: where you are, what you set, the ladder with points to press, and the meter.
import { button, make } from './parts.js';

const doc = document;

export function select(label, inside, options, chosen, act) {
  const box = make('select', '', '', make('label', label, 'field', inside));
  options.forEach((o, i) => {
    const option = make('option', o, '', box);
    option.value = i;
  });
  box.value = chosen;
  box.onchange = () => { act(Number(box.value)); };
  return box;
}
// on.name() when somebody wants to name the fault
export function bench(practice, round, inside, on) {
  const data = practice.data, names = practice.names, circuit = round.circuit, act = round.act;
  const place = make('section', '', 'place', inside), ladder = make('section', '', 'rungs', inside);
  const meter = make('section', '', 'readout', inside);
  let next = 'red', shown = null, redBox = null, blackBox = null, hint = null, tips = [], slot = null, handsOpen = false;
  const shut = {};

  function here() { return data.places[round.place]; }
  function isOpen() { return here()[1] < 0 || round.at.state.open[here()[1]]; }
  // what is drawn again keeps the focus where it was, for keys and for screen readers
  function keepFocus(what) {
    function all() { return [].slice.call(inside.querySelectorAll('button, select, summary')); }
    const at = all().indexOf(doc.activeElement);
    what();
    if (at >= 0 && all()[at]) all()[at].focus({ preventScroll: true });
  }
  function done(what) {
    keepFocus(() => {
      what();
      drawPlace();
      drawLadder();
      drawMeter(false);
    });
  }
  // the leads that reach here, ground first
  function reach() {
    const ground = [data.names.length, here()[0], 0];
    names[data.names.length] = 'ground';
    return isOpen() ? [ground].concat(circuit.leads.filter(lead => lead[1] === here()[0] && lead[2])) : [];
  }
  function toggle(words, isOn, box, what) {
    const b = button(words, box, () => { done(what); });
    b.setAttribute('aria-pressed', isOn ? 'true' : 'false');
    return b;
  }
  function drawPlace() {
    const box = make('div'), state = round.at.state, spot = here();
    make('h2', 'At the ' + names[spot[0]], '', box);
    select('Walk to', box, data.places.map((p, i) => {
      const minutes = data.walks[1][round.place][i];
      return names[p[0]] + (i === round.place ? ' (here)' : ', ' + minutes + ' min');
    }), round.place, to => { if (to !== round.place) done(() => { act.walk(to); }); });
    const tools = make('div', '', 'tools', box);
    if (circuit.hasDelays) button('Wait 5 min', tools, () => { done(() => { act.wait(5); }); });
    if (spot[1] >= 0) toggle((state.open[spot[1]] ? 'Close: ' : 'Open: ') + names[spot[1]], state.open[spot[1]], tools, act.panel);
    data.controls.forEach(c => {
      const isHere = c[3].indexOf(spot[0]) >= 0 || !c[3].length;
      if (c[2].length && (isHere || c[1] !== practice.SELECTOR)) {
        select(names[c[0]], box, c[2].map(p => names[p]), c[2].indexOf(state.at[c[0]]), i => {
          done(() => { act.set(c, c[2][i]); });
        });
      } else if (isHere && c[1] === practice.ISOLATOR) {
        toggle((state.off[c[0]] ? 'Switch on: ' : 'Switch off: ') + names[c[0]], state.off[c[0]], tools, () => { act.power(c); });
      } else if (isHere && c[1] === practice.INTERLOCK) {
        toggle((state.bypassed[c[0]] ? 'Take the bypass off: ' : 'Bypass: ') + names[c[0]], state.bypassed[c[0]], tools, () => { act.bypass(c); });
      }
    });
    slot = make('div', '', '', box);
    hands();
    sights(box);
    place.textContent = '';
    place.appendChild(box);
  }
  // wires and parts that come off, fuses that are replaced
  function hands() {
    slot.textContent = '';
    if (!isOpen()) return;
    const state = round.at.state, more = make('details', '', 'hands', slot), tools = make('div', '', 'tools', more);
    more.open = handsOpen;
    more.ontoggle = () => { handsOpen = more.open; };
    make('summary', 'Take off, put back, replace', '', more).after(tools);
    if (round.red && round.red[2]) {
      const node = round.red[2], wires = circuit.branches.filter(b => b.wire && (b.a === node || b.b === node) && !state.loose[b.id]);
      const what = 'wires at ' + names[round.red[0]];
      if (wires.length) button('Take off: ' + what, tools, () => { done(() => { act.loosen(what, wires); }); });
    }
    const parts = circuit.branches.filter(b => {
      return b.kind > 1 && !state.loose[b.id] && reach().some(lead => lead[2] && (lead[2] === b.a || lead[2] === b.b));
    }).map(b => b.part).filter((p, i, all) => all.indexOf(p) === i);
    if (parts.length) {
      select('Take a part off', more, ['choose'].concat(parts.map(p => names[p])), 0, i => {
        if (i) done(() => { act.loosen(names[parts[i - 1]], circuit.branches.filter(b => b.part === parts[i - 1])); });
      });
    }
    Object.keys(state.loose).map(id => state.loose[id]).filter((what, i, all) => all.indexOf(what) === i)
      .forEach(what => { button('Put back: ' + what, tools, () => { done(() => { act.restore(what); }); }); });
    const fuses = circuit.branches.filter(b => b.kind === 2 && parts.indexOf(b.part) >= 0).map(b => b.part)
      .filter((p, i, all) => all.indexOf(p) === i);
    circuit.resets.filter(part => {
      return circuit.branches.some(b => {
        return b.part === part && reach().some(lead => lead[2] && (lead[2] === b.a || lead[2] === b.b));
      });
    }).forEach(part => { button('Reset: ' + names[part], tools, () => { done(() => { act.reset(part); }); }); });
    fuses.forEach(fuse => { button('New: ' + names[fuse], tools, () => { done(() => { act.replace(fuse); }); }); });
  }
  function sights(box) {
    const seen = circuit.seen(round.at), list = make('ul', '', 'seen');
    data.sights.forEach(s => {
      if (s[1].length && s[1].indexOf(here()[0]) < 0) return;
      const known = data.variants[round.variant].v.map(id => data.pieces[id][0]);
      if (!s[2].some(key => known.indexOf(key) >= 0)) return;
      const at = s[2].findIndex(key => seen.indexOf(key) >= 0);
      make('li', names[s[0]] + ': ' + (s[3].length ? at < 0 ? 'none of its values' : s[3][at] : at < 0 ? 'no' : 'yes'), '', list);
    });
    if (!round.at.steady) make('li', 'Relays chatter: nothing settles.', '', list);
    if (!list.children.length) return;
    make('h3', 'What you see, hear and feel here', '', box);
    box.appendChild(list);
  }
  function put(lead) {
    const which = data.dials[round.dial][0] === 'amps' ? 'red' : next;
    act.lead(which, lead);
    next = which === 'red' ? 'black' : 'red';
    drawMeter(true);
    mark();
    hands();
  }
  function point(node, box) {
    const all = reach(), found = node.map(words => {
      return all.find(lead => words === names[lead[0]] + ' at ' + names[lead[1]] || words === names[lead[0]]);
    }).find(Boolean), words = found ? names[found[0]] : node[0] || 'inside';
    const b = button(words, box, () => {
      if (found) put(found);
      else say(isOpen() ? words + ': not here.' : 'Open the ' + names[here()[1]] + ' first.');
    });
    tips.push({ button: b, lead: found, words: words });
  }
  // where the leads are; the ladder stays as it is drawn
  function mark() {
    if (hint) hint.textContent = 'Press a point to put the ' + next + ' lead on it.';
    tips.forEach(tip => {
      const color = tip.lead && (same(tip.lead, round.red) ? 'red' : same(tip.lead, round.black) ? 'black' : '');
      tip.button.className = 'tip' + (tip.lead ? '' : ' far') + (color ? ' on-' + color : '');
      if (color) tip.button.setAttribute('aria-label', tip.words + ', ' + color + ' lead'); else tip.button.removeAttribute('aria-label');
    });
  }
  function same(a, b) { return a && b && a[0] === b[0] && a[1] === b[1]; }
  function drawLadder() {
    const box = make('div');
    make('h2', 'Ladder', '', box);
    hint = make('p', '', '', box);
    tips = [];
    data.ladders[round.variant].forEach((block, n) => {
      const part = make('details', '', 'source' + (block[1] ? ' is-line' : ''), box);
      part.open = !shut[n];
      part.ontoggle = () => { shut[n] = !part.open; };
      make('summary', block[0] + (block[1] ? ', line voltage' : ''), '', part);
      block[2].forEach(id => {
        const rung = data.rungs[id], row = make('div', '', 'rung', part);
        make('h3', rung[0] + '  ' + rung[1], '', row);
        const line = make('div', '', 'across', row);
        rung[2].forEach((node, i) => {
          point(node, line);
          const element = rung[3][i];
          if (!element) return;
          const cell = make('span', '', 'element', line);
          cell.innerHTML = '<svg viewBox="-24 -22 48 44" aria-hidden="true"><path d="' + data.symbols[element[2]] + '"/></svg>';
          make('b', element[0], '', cell);
          if (element[1]) make('small', element[1], '', cell);
        });
      });
    });
    mark();
    ladder.textContent = '';
    ladder.appendChild(box);
  }
  function drawMeter(taken) {
    const reading = round.reading(taken);
    if (!shown) dock();
    const points = reach(), options = ['off'].concat(points.map(lead => names[lead[0]]));
    [['red', redBox], ['black', blackBox]].forEach(one => {
      one[1].textContent = '';
      options.forEach((words, i) => { make('option', words, '', one[1]).value = i; });
      one[1].value = 1 + points.findIndex(lead => same(lead, round[one[0]]));
      one[1].onchange = () => {
        act.lead(one[0], points[Number(one[1].value) - 1] || null);
        drawMeter(true);
        mark();
        hands();
      };
    });
    if (!reading) { say(isOpen() ? 'Put both leads on.' : 'Open the ' + names[here()[1]] + ' first.'); return; }
    shown.className = 'display' + (reading.text === 'LIVE' ? ' danger' : '');
    shown.textContent = reading.text + ' ' + reading.unit;
  }
  function say(words) {
    shown.className = 'display say';
    shown.textContent = words;
  }
  function dock() {
    const first = make('div', '', 'first', meter);
    shown = make('output', '', 'display', first);
    button('Name it', first, on.name).setAttribute('aria-label', 'Name it: name the fault');
    const row = make('div', '', 'leads', meter);
    select('Dial', row, data.dials.map(d => d[1]), round.dial, i => {
      act.dial(i);
      drawMeter(!!round.red);
    });
    redBox = select('Red', row, [], 0, null);
    blackBox = select('Black', row, [], 0, null);
  }
  drawPlace();
  drawLadder();
  drawMeter(false);
  doc.body.classList.add('benching');
}
