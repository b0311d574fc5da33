// A round: what was dealt, what hands do, what it costs, and what nobody should do.
import { circuit as install } from './circuit.js';
import { display } from './meter.js';

const SELECTOR = 0, ISOLATOR = 2, INTERLOCK = 3, LINE_VOLTS = 50, LOAD_AMPS = 0.5;
// minutes of work, walking aside (common practice, no source)
const LEAD = 0.5, SET = 0.5, PANEL = 2, LOOSE = 2, REPLACE = 5;

// numbers that follow from a seed, the same in every browser (mulberry32)
function random(seed) {
  let a = seed >>> 0;
  return () => {
    a = a + 0x6d2b79f5 | 0;
    let t = Math.imul(a ^ a >>> 15, 1 | a);
    t = t + Math.imul(t ^ t >>> 7, 61 | t) ^ t;
    return ((t ^ t >>> 14) >>> 0) / 4294967296;
  };
}
// an index by weight
function pick(weights, next) {
  let left = next() * weights.reduce((sum, w) => sum + w, 0);
  return Math.max(0, weights.findIndex(w => {
    left -= w;
    return left < 0;
  }));
}
export function practiceOn(data) {
  const names = data.names.map((key, i) => data.shown[i] || key);

  function start() {
    const at = {};
    data.controls.forEach(c => { if (c[2].length) at[c[0]] = c[2][0]; });
    return { at: at, off: {}, bypassed: {}, loose: {}, open: {}, replaced: {} };
  }
  function changed(state, field, thing, value) {
    const next = Object.assign({}, state), all = Object.assign({}, state[field]);
    if (value === false) delete all[thing]; else all[thing] = value;
    next[field] = all;
    return next;
  }
  // the states in which a complaint shows: its controls in each of their positions, all others as at the start
  function calls(symptoms) {
    return symptoms[0].reduce((states, called) => {
      return [].concat.apply([], states.map(state => {
        return called[1].map(position => changed(state, 'at', called[0], position));
      }));
    }, [start()]);
  }
  function complains(circuit, symptoms) {
    return calls(symptoms).some(state => {
      const seen = circuit.seen(circuit.settle(state));
      function is(key) { return seen.indexOf(key) >= 0; }
      return symptoms[1].every(is) && !symptoms[2].some(is) && !(symptoms[3].length && symptoms[3].every(is));
    });
  }
  function faultsOf(variant, number) { return data.variants[variant].k[number][0]; }
  // the cases of a level, or, if the system has none, of the level below
  function ofLevel(variant, level) {
    const cases = data.forms[variant][2], all = cases.map(c => {
      return level === 9 ? c[0] < 10 ? c[1] : 0 : c[0] === level ? c[1] : 0;
    });
    return all.some(Boolean) || level < 2 ? all : ofLevel(variant, level === 10 ? 9 : level - 1);
  }
  function hasLevel(variant, level) {
    return level === 9 || data.forms[variant][2].some(c => c[0] === level);
  }
  // faults: the names of those to deal from; all if there are none
  function draw(level, faults, next) {
    const shares = data.forms.map((f, i) => hasLevel(i, level) ? f[1] : 0);
    const variant = level < 5 && !faults.length ? 0 : pick(shares.some(Boolean) ? shares : [1], next);
    const weights = ofLevel(variant, level), chosen = data.variants[variant].k.map(k => {
      return k[0].length === 1 && faults.indexOf(k[0][0]) >= 0 ? 1 : 0;
    });
    const number = pick(chosen.some(Boolean) ? chosen : weights, next), installation = Math.floor(next() * data.count);
    const circuit = install(data, variant, installation, number);
    return { variant: variant, number: number, installation: installation, circuit: circuit, trees: data.trees.filter(t => {
      return t[4] && complains(circuit, t[4]);
    }) };
  }
  function deal(level, seed, faults) {
    const next = random(seed);
    let dealt = draw(level, faults, next);
    for (let i = 0; i < 12 && !dealt.trees.length; i++) dealt = draw(level, faults, next);
    return begin(dealt, level, seed, next);
  }
  function begin(dealt, level, seed, next) {
    const circuit = dealt.circuit, leads = circuit.leads, r = {
      level: level, seed: seed, variant: dealt.variant, installation: dealt.installation, number: dealt.number, circuit: circuit,
      faults: faultsOf(dealt.variant, dealt.number), place: data.walks[0], dial: 0, red: null, black: null,
      minutes: 0, walked: 0, way: [], unsafe: [], started: new Date().toISOString(),
      tree: dealt.trees.length ? dealt.trees[Math.floor(next() * dealt.trees.length)] : null
    };
    r.at = circuit.settle(start());

    function volts(node) {
      const v = circuit.read(r.at, 'volts', node, 0);
      return typeof v === 'number' ? v : 0;
    }
    function note(words, minutes, walked) {
      r.minutes += minutes;
      r.walked += walked || 0;
      r.way.push({ words: words, minutes: minutes, walked: walked || 0 });
    }
    function danger(words) {
      if (r.unsafe.indexOf(words) < 0) r.unsafe.push(words);
    }
    function go(state, renewed) { r.at = circuit.settle(state, r.at, renewed); }
    function change(field, thing, value) { go(changed(r.at.state, field, thing, value)); }
    // line voltage behind a panel; the line side of a switch stays live and does not count
    function liveBehind() {
      const switches = data.controls.filter(c => c[1] === ISOLATOR).map(c => c[0]);
      return leads.find(lead => {
        return lead[1] === data.places[r.place][0] && data.live.indexOf(lead[0]) >= 0 && volts(lead[2]) > LINE_VOLTS
          && !circuit.branches.some(b => switches.indexOf(b.part) >= 0 && (b.a === lead[2] || b.b === lead[2]));
      });
    }
    // a hand on what is live
    function touch(branches, what) {
      branches.some(b => {
        const node = volts(b.a) > LINE_VOLTS ? b.a : volts(b.b) > LINE_VOLTS ? b.b : -1;
        if (node > 0) danger('Touched live: ' + what + ', ' + Math.round(volts(node)) + ' V to ground');
        return node > 0;
      });
    }
    r.act = {
      walk: to => {
        const minutes = data.walks[1][r.place][to];
        r.place = to;
        r.red = r.black = null;
        note('Walk to ' + names[data.places[to][0]], 0, minutes);
      },
      panel: () => {
        const panel = data.places[r.place][1], isOpen = !r.at.state.open[panel], live = isOpen && liveBehind();
        if (live) danger('Panel opened with the power on: ' + names[panel] + ', ' + names[live[0]] + ' is live');
        if (!isOpen) r.red = r.black = null;
        change('open', panel, isOpen);
        note((isOpen ? 'Open: ' : 'Close: ') + names[panel], PANEL);
      },
      set: (control, position) => {
        change('at', control[0], position);
        note(names[control[0]] + ': ' + names[position], SET);
      },
      power: control => {
        const isOff = !r.at.state.off[control[0]];
        if (isOff && control[4] && circuit.current(r.at, control[0]) > LOAD_AMPS) danger('Switched under load: ' + names[control[0]]);
        change('off', control[0], isOff);
        note((isOff ? 'Switch off: ' : 'Switch on: ') + names[control[0]], SET);
      },
      bypass: control => {
        const isOn = !r.at.state.bypassed[control[0]];
        change('bypassed', control[0], isOn);
        note((isOn ? 'Bypass: ' : 'Take the bypass off: ') + names[control[0]], SET);
      },
      // the wires at a point, or a part
      loosen: (what, branches) => {
        touch(branches, what);
        let state = r.at.state;
        branches.forEach(b => { state = changed(state, 'loose', b.id, what); });
        go(state);
        note('Take off: ' + what, LOOSE);
      },
      restore: what => {
        let state = r.at.state;
        const off = circuit.branches.filter(b => state.loose[b.id] === what);
        touch(off, what);
        off.forEach(b => { state = changed(state, 'loose', b.id, false); });
        go(state);
        note('Put back: ' + what, LOOSE);
      },
      replace: fuse => {
        const renewed = {};
        renewed[fuse] = true;
        touch(circuit.branches.filter(b => b.part === fuse), names[fuse]);
        go(changed(r.at.state, 'replaced', fuse, true), renewed);
        note('New: ' + names[fuse], REPLACE);
      },
      reset: part => {
        const renewed = {};
        renewed[part] = true;
        go(changed(r.at.state, 'replaced', part, true), renewed);
        note('Reset: ' + names[part], SET);
      },
      // as in a tree, time passes for timers only where somebody waits
      wait: minutes => {
        r.at = circuit.settle(r.at.state, r.at, {}, 60 * minutes);
        note('Wait', minutes);
      },
      dial: number => { r.dial = number; },
      lead: (which, lead) => { r[which] = lead; }
    };
    // what is on the display; taken says that a lead was put somewhere for it
    r.reading = taken => {
      const dial = data.dials[r.dial], isClamp = dial[0] === 'amps', scale = { digit: dial[2], high: dial[3], unit: dial[4] };
      if (!r.red || !isClamp && !r.black) return null;
      const black = isClamp ? r.red : r.black, value = circuit.read(r.at, dial[0], r.red[2], black[2]);
      const shown = value === 'live' ? { text: 'LIVE', unit: '' } : display(scale, data.counts, value);
      const where = names[r.red[0]] + (isClamp ? '' : ' to ' + names[black[0]]);
      if (value === 'live') danger('Measured live: ' + dial[1].toLowerCase() + ' from ' + where);
      if (taken) note(dial[1] + ', ' + where + ': ' + shown.text + ' ' + shown.unit, LEAD);
      return { value: value, text: shown.text, unit: shown.unit, where: where };
    };
    // what stays behind when somebody names the fault and goes
    r.leave = () => {
      Object.keys(r.at.state.bypassed).forEach(one => { danger('Left bypassed: ' + names[one]); });
      Object.keys(r.at.state.open).forEach(one => { danger('Left open: ' + names[one]); });
      r.ended = new Date().toISOString();
    };
    return r;
  }
  return { data, names, start, changed, deal, SELECTOR, ISOLATOR, INTERLOCK };
}
