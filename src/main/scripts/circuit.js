// One installation of a system with one case: what settles, and what a meter shows. The data are those of CircuitExport; how the
// relays move is that of the program's circuit package.
import { network as solve } from './network.js';

// longer than any delay
const LONG = 2147483647, IDLE = -1;
const MOST_ROUNDS = 60, OFF = 0, HUMMING = 1, ON = 2;
const SWITCH = 1, FUSE = 2, LOAD = 3, ABSENT = 0, JUMPERED = 4, LOOSE = 8, NO_FARADS = 1e-14;

// a row of doubles in base 64
function numbers(text) {
  const bytes = Uint8Array.from(atob(text), c => c.charCodeAt(0));
  return new Float64Array(bytes.buffer);
}
// which installation of which variant, and its case: a number, or -1 for the healthy system
export function circuit(data, number, installation, caseNumber) {
  if (!data.doubles) data.doubles = numbers(data.rows);
  const variant = data.variants[number], given = caseNumber < 0 ? [[]] : variant.k[caseNumber];
  const fault = caseNumber < 0 ? {} : data.cases[given[1]];
  const branches = variant.b.map(id => { return { id: id, raw: data.branches[id] }; }), fuseOf = {}, loadOf = {}, stateOf = {};
  const contactOf = {}, place = {};
  const loads = pieces(variant.l, loadOf), fuses = pieces(variant.f, fuseOf), states = pieces(variant.x, stateOf);
  const altered = fault.y || {}, held = fault.h || {}, stops = fault.s || [], trips = fault.w || [], pickUps = fault.p || {};
  const openedBy = fault.o || [], solved = {}, stayingOpen = [], timed = [];

  function pieces(ids, index) {
    return ids.map((id, i) => {
      index[data.pieces[id][0]] = i;
      return data.pieces[id];
    });
  }
  // a quantity of this installation
  function value(q) {
    const form = data.q[q];
    return [form[0] * data.doubles[form[1] * data.count + installation],
      form.length > 2 ? form[2] * data.doubles[form[3] * data.count + installation] : 0];
  }
  branches.forEach((b, i) => {
    const raw = b.raw, y = altered[b.id];
    b.a = raw[0];
    b.b = raw[1];
    b.kind = raw[2];
    b.part = raw[3];
    b.own = raw[4];
    b.wire = raw[8];
    b.when = raw[9];
    b.panel = raw[10];
    b.opened = openedBy.indexOf(b.id) >= 0;
    b.mode = [null, value(y ? y[0] : raw[5]), value(y ? y[1] : raw[6])];
    b.direct = raw[7] < 0 ? null : value(y ? y[2] : raw[7]);
    b.share = [0, b.opened ? 0 : y ? value(y[3])[0] : 1, b.opened ? 0 : y ? value(y[4])[0] : 1];
    place[b.id] = i;
    if (b.kind === SWITCH) {
      contactOf[b.own] = i;
      if (contactOf[b.part] === undefined) contactOf[b.part] = i;
    }
  });
  const cores = variant.c.map((core, i) => fault.t && fault.t[i] || core);
  const sources = variant.s.map((s, i) => { return { branch: place[s[0]], amps: value(fault.i ? fault.i[i] : s[1]) }; });
  const pickUp = loads.map(l => value(pickUps[l[0]] === undefined ? l[2] : pickUps[l[0]])[0]);
  const dropOut = loads.map(l => value(l[3])[0]);

  fuses.forEach(f => { stayingOpen.push(f[0]); });
  // switches with manual reset stay open too, once they have opened
  variant.m.forEach(part => { stayingOpen.push(part); });
  const resets = branches.map((b, i) => { return { at: i, number: variant.m.indexOf(b.part) + fuses.length }; })
    .filter(one => one.number >= fuses.length);
  states.forEach((s, i) => { if (s.length > 4) timed.push(i); });

  function holds(c, r, state) {
    const rest = c.slice(1), one = c[1];
    switch (c[0]) {
      case 0: return rest.every(of => holds(of, r, state));
      case 1: return rest.some(of => holds(of, r, state));
      case 2: return !holds(one, r, state);
      case 3: return state.at[one] === c[2];
      case 4: return loadOf[one] === undefined ? r.states[stateOf[one]] : r.loads[loadOf[one]] === ON;
      case 5: return r.loads[loadOf[one]] === HUMMING;
      default: return contactOf[one] === undefined ? !r.blown[fuseOf[one]] : r.closed[contactOf[one]];
    }
  }
  function moveContacts(r, state) {
    branches.forEach((b, i) => {
      if (b.kind !== SWITCH) return;
      const trip = trips.find((t, n) => place[t[0]] === i && r.tripped[n]);
      const stuck = trip ? trip[1] : held[b.id];
      const reset = variant.m.indexOf(b.part), isTripped = reset >= 0 && r.blown[fuses.length + reset];
      r.closed[i] = stuck === undefined ? !isTripped && holds(b.when, r, state) : !!stuck;
    });
    return r;
  }
  function copy(r) {
    return { loads: r.loads.slice(), blown: r.blown.slice(), states: r.states.slice(), rounds: r.rounds.slice(),
      tripped: r.tripped.slice(), closed: Object.assign({}, r.closed), waited: r.waited.slice(), left: r.left };
  }
  function dropped(blown, state) {
    return moveContacts({ loads: loads.map(() => OFF), blown: blown, states: states.map(() => false),
      rounds: states.map(() => 0), tripped: trips.map(() => false), closed: {},
      waited: timed.length ? states.map(() => IDLE) : [], left: timed.length ? LONG : 0 }, state);
  }
  // what was open before anybody came, once some is replaced or reset
  function blownBefore(replaced) {
    const open = given[2] ? given[2][parseInt(given[3][installation], 36)] : [];
    return stayingOpen.map(one => open.indexOf(one) >= 0 && !replaced[one]);
  }
  function isNewRun(from, to) {
    return data.stages.some(stage => from.at[stage] !== to.at[stage]);
  }
  // a delay runs, or begins to
  function isDelayed(was, state) {
    const over = timed.length ? settleFrom(dropped(blownBefore(state.replaced), state), state) : null;
    return over && (!over.steady || timed.some(i => was.waited[i] !== IDLE || was.states[i] !== over.relays.states[i]));
  }
  // how the equipment begins in a state that comes from another, in which it was left
  function begun(before, state, renewed, seconds) {
    const blown = before.relays.blown.map((open, i) => open && !renewed[stayingOpen[i]]);
    const fresh = blownBefore(state.replaced), isNew = isNewRun(before.state, state), was = before.relays;
    const isHeld = blown.join() !== fresh.join() || !isNew && variant.h.some(one => {
      return loadOf[one] !== undefined && was.loads[loadOf[one]] !== OFF
        || stateOf[one] !== undefined && (was.states[stateOf[one]] || was.rounds[stateOf[one]] > 0);
    });
    if (!isHeld && !isDelayed(was, state)) return dropped(fresh, state);
    if (isNew) return dropped(blown, state);
    const r = copy(was);
    r.blown = blown;
    r.tripped = trips.map(() => false);
    r.left = timed.length ? seconds : 0;
    return moveContacts(r, state);
  }
  function next(now, levels, over, state) {
    const r = copy(now);
    let blew = false;
    over.forEach((is, i) => {
      blew = blew || is && !r.blown[i];
      r.blown[i] = r.blown[i] || is;
    });
    if (blew) return r;
    loads.forEach((l, i) => {
      const enough = levels[i] === 3 || levels[i] === 2 && now.loads[i] === ON;
      r.loads[i] = enough && stops.indexOf(l[0]) < 0 && holds(l[1], now, state) ? ON : levels[i] > 0 ? HUMMING : OFF;
    });
    states.forEach((s, i) => {
      const set = isSet(s, r, state);
      if (s.length > 4) { time(i, set, r); return; }
      if (s[3] < 0) { r.states[i] = set; return; }
      r.rounds[i] = set ? Math.min(s[3], r.rounds[i] + 1) : 0;
      r.states[i] = !holds(s[2], r, state) && (r.states[i] || r.rounds[i] >= s[3]);
    });
    trips.forEach((t, i) => { r.tripped[i] = r.tripped[i] || holds(t[2], r, state); });
    moveContacts(r, state);
    resets.forEach(one => { r.blown[one.number] = r.blown[one.number] || !r.closed[one.at]; });
    return r;
  }
  function isSet(s, r, state) { return holds(s[1], r, state) && stops.indexOf(s[0]) < 0; }
  // a timer comes on, or goes off, some time after its condition
  function time(i, set, r) {
    const waited = Math.max(0, r.waited[i]), isRunning = set !== r.states[i] && waited < states[i][set ? 4 : 5];
    r.waited[i] = isRunning ? waited : IDLE;
    r.states[i] = isRunning ? !set : set;
  }
  // the same relays at the end of the next delay, or of the wait
  function later(settled, state) {
    const r = copy(settled), running = timed.filter(i => isSet(states[i], settled, state) !== settled.states[i]);
    const passing = running.map(i => states[i][settled.states[i] ? 5 : 4] - settled.waited[i]);
    const seconds = Math.min.apply(null, passing.concat(settled.left));
    if (!running.length) r.left = 0;
    else if (r.left !== LONG) r.left -= seconds;
    running.forEach(i => { r.waited[i] += seconds; });
    return r;
  }
  function ended(r) {
    const last = copy(r);
    last.left = 0;
    return last;
  }
  // what each branch is in a relay state, with what hands have done
  function modes(r, state) {
    return branches.map((b, i) => {
      const byHand = (state.off[b.part] || b.kind === SWITCH && state.open[b.panel]) && held[b.id] !== 1;
      const mode = byHand || b.kind === SWITCH && !r.closed[i] || b.kind === FUSE && r.blown[fuseOf[b.part]] ? ABSENT
        : b.kind === LOAD && r.loads[loadOf[b.part]] === ON ? ON : 1;
      return (state.loose[b.id] ? LOOSE : mode) | (state.bypassed[b.part] ? JUMPERED : 0);
    });
  }
  function network(now, isDirect) {
    const stamps = [], currents = {}, index = (isDirect ? 'd' : 'a') + now.join('');
    if (solved[index]) return solved[index];
    branches.forEach((b, i) => {
      const y = isDirect ? b.direct : b.mode[now[i] & 3];
      if (now[i] & 3 && !b.opened && y) stamps.push([b.a, b.b, y[0], y[1]]);
      if (now[i] & JUMPERED) stamps.push([b.a, b.b, data.jumper, 0]);
    });
    (fault.e || []).forEach(e => {
      if (e[0] < 0 || !(now[place[e[0]]] & LOOSE)) stamps.push([e[1][0], e[1][1]].concat(value(e[1][2])));
    });
    cores.forEach(core => {
      const second = core[0].slice(2);
      core[isDirect ? 2 : 1].forEach(s => {
        stamps.push([s[0], s[1]].concat(value(s[2]), second.indexOf(s[0]) >= 0 !== second.indexOf(s[1]) >= 0));
      });
    });
    if (!isDirect) {sources.forEach(s => {
      const b = branches[s.branch];
      if (!(now[s.branch] & 3)) return;
      [[b.a, 1], [b.b, -1]].forEach(end => {
        const sum = currents[end[0]] || (currents[end[0]] = [0, 0]);
        sum[0] += end[1] * s.amps[0];
        sum[1] += end[1] * s.amps[1];
      });
    });}
    return solved[index] = solve(data.nodes, stamps, currents);
  }
  function square(net, b) {
    const x = net.re[b.a] - net.re[b.b], y = net.im[b.a] - net.im[b.b];
    return x * x + y * y;
  }
  function levelsIn(net, now) {
    const all = loads.map(() => 3);
    branches.forEach((b, i) => {
      if (b.kind !== LOAD) return;
      const n = loadOf[b.part], share = b.share[now[i] & 3], v = square(net, b) * share * share, on = pickUp[n] * pickUp[n];
      const hum = loads[n][4];
      all[n] = Math.min(all[n], v >= on ? 3 : v >= dropOut[n] * dropOut[n] ? 2 : v >= on * hum * hum ? 1 : 0);
    });
    return all;
  }
  function overloads(net, now) {
    const over = fuses.map(() => false);
    branches.forEach((b, i) => {
      if (b.kind !== FUSE || !(now[i] & 3) || b.opened) return;
      const y = b.mode[2], most = fuses[fuseOf[b.part]][1];
      if (square(net, b) * (y[0] * y[0] + y[1] * y[1]) > most * most) over[fuseOf[b.part]] = true;
    });
    return over;
  }
  // round by round, and while somebody waits delay by delay
  function settleFrom(first, state) {
    const settled = [];
    let r = first, visited = [r], now = modes(r, state), net = network(now), level = levelsIn(net, now), high = overloads(net, now);
    while (true) {
      let then = next(r, level, high, state);
      const steady = same(then, r), changed = modes(then, state), isOver = steady && !then.left;
      const goesOn = steady && !isOver && settled.length <= MOST_ROUNDS && !known(settled, ended(then));
      if (goesOn) {
        settled.push(ended(then));
        visited = [];
        then = later(then, state);
      } else if (steady || known(visited, then) || visited.length > MOST_ROUNDS) {
        return { state: state, relays: ended(then), modes: changed, steady: isOver, net: net };
      }
      visited.push(then);
      r = then;
      if (changed.join() !== now.join()) {
        now = changed;
        net = network(now);
        level = levelsIn(net, now);
        high = overloads(net, now);
      }
    }
  }
  function known(all, r) {
    return all.some(one => same(one, r));
  }
  function same(one, other) { return JSON.stringify(one) === JSON.stringify(other); }

  return {
    leads: variant.p,
    branches: branches,
    // settles in a state { at, off, bypassed, loose, open, replaced }; before is what
    // settle gave of the state that it comes from, renewed what was replaced or reset since, seconds how long somebody has waited
    settle: (state, before, renewed, seconds) => {
      return settleFrom(before ? begun(before, state, renewed || {}, seconds || 0) : dropped(blownBefore(state.replaced), state), state);
    },
    // keys of the sights that are seen
    seen: at => {
      return variant.v.map(id => data.pieces[id]).filter(sight => {
        return (fault.v || []).reduce((is, shown) => {
          return shown[0] === sight[0] && holds(shown[2], at.relays, at.state) ? !!shown[1] : is;
        }, holds(sight[1], at.relays, at.state));
      }).map(sight => sight[0]);
    },
    // the most that flows in a limb of a part, amperes
    hasDelays: timed.length > 0,
    resets: variant.m,
    current: (at, part) => {
      return branches.reduce((most, b, i) => {
        const mode = at.modes[i] & 3;
        return b.part !== part || !mode || b.opened ? most
          : Math.max(most, Math.sqrt(square(at.net, b)) * Math.hypot(b.mode[mode][0], b.mode[mode][1]));
      }, 0);
    },
    // what the meter shows between two nodes: a number, or a word that says why there is none
    read: (at, dial, red, black) => {
      if (!at.steady) return 'unsteady';
      if (dial === 'amps') return amps(at, red);
      const net = at.net;
      function volts(y) {
        if (!net.connected(red, black)) return 'floating';
        const z = net.impedance(red, black), x = net.re[red] - net.re[black], u = net.im[red] - net.im[black];
        const p = 1 + y[0] * z[0] - y[1] * z[1], q = y[0] * z[1] + y[1] * z[0];
        return Math.sqrt((x * x + u * u) / (p * p + q * q));
      }
      if (dial === 'volts' || dial === 'low') return volts(data.inputs[dial === 'low' ? 1 : 0]);
      if (volts(data.inputs[2]) > data.dead) return 'live';
      if (dial === 'ohms') {
        const direct = network(at.modes, true);
        return direct.connected(red, black) ? direct.impedance(red, black)[0] : Infinity;
      }
      if (!net.connected(red, black)) return 0;
      const z = net.impedance(red, black), farads = -z[1] / (z[0] * z[0] + z[1] * z[1]) / data.omega;
      return farads >= -NO_FARADS ? Math.max(0, farads) * 1e6 : 'unsteady';
    }
  };
  // the clamp is around the first wire at a node, or else around the first contact, fuse or load
  function amps(at, node) {
    const ends = branches.filter(b => b.a === node || b.b === node);
    const b = ends.find(one => one.wire) || ends.find(one => one.kind);
    const mode = b ? at.modes[place[b.id]] & 3 : 0;
    if (!mode || b.opened) return 0;
    return Math.sqrt(square(at.net, b)) * Math.hypot(b.mode[mode][0], b.mode[mode][1]);
  }
}
