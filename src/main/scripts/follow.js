// Follows a tree on the circuit that was dealt, as a technician would who makes no mistake.
import { display } from './meter.js';

const CHECK = 0, SENSE = 1, TASK = 2, FINDING = 3;
const MOST_STEPS = 4000, DEEPEST = 300;

export function follow(practice, round) {
  const data = practice.data, circuit = round.circuit;
  const seenIn = data.variants[round.variant].v.map(id => data.pieces[id][0]);
  const index = {};
  let steps = 0;
  data.trees.forEach((t, i) => { index[t[0]] = i; });

  function branchesOf(key) {
    const name = data.names[key], at = name.lastIndexOf(' at ');
    const members = (data.assemblies.find(one => one[0] === key) || [0, []])[1];
    const ofPart = circuit.branches.filter(b => b.part === key);
    const all = ofPart.length ? ofPart : circuit.branches.filter(b => b.own === key || members.indexOf(b.part) >= 0);
    if (all.length || at < 0) return all;
    const lead = circuit.leads.find(one => {
      return data.names[one[0]] === name.slice(0, at) && data.names[one[1]] === name.slice(at + 4);
    });
    return lead ? circuit.branches.filter(b => b.wire && (b.a === lead[2] || b.b === lead[2])) : [];
  }
  // one action after the other, then what a task waits
  function after(at, step) {
    const done = step[4].reduce(act, at);
    return step[6] && circuit.hasDelays ? circuit.settle(done.state, done, {}, step[6]) : done;
  }
  function act(at, changes) {
    let state = at.state;
    const renewed = {};
    changes.forEach(c => {
      const field = c[0] ? ['off', 'bypassed', 'loose', 'open', 'replaced', 'replaced'][data.conditions.indexOf(c[1])] : 'at', on = c[0] === 1;
      if (!field || field === 'replaced' && !on) return;
      if (field === 'at') state = practice.changed(state, 'at', c[1], c[2]);
      else if (field === 'loose') branchesOf(c[2]).forEach(b => { state = practice.changed(state, 'loose', b.id, on); });
      else state = practice.changed(state, field, c[2], on);
      if (field === 'replaced') renewed[c[2]] = true;
    });
    return state === at.state ? at : circuit.settle(state, at, renewed);
  }
  function node(point, place) {
    if (data.names[point] === 'ground') return 0;
    const all = circuit.leads.filter(lead => lead[0] === point);
    const found = all.find(lead => lead[1] === place) || (all.length === 1 ? all[0] : null);
    return found ? found[2] : -1;
  }
  // [words, targets]: what is read, and the steps that may follow
  function measured(step, at, place) {
    const every = step[8].map(way => way[2]).concat(step.slice(9));
    const nodes = step[5].map(point => node(point, place));
    if (!nodes.length || nodes.some(n => n < 0)) return ['', every];
    const value = circuit.read(at, step[4], nodes[0], nodes[nodes.length - 1]);
    if (typeof value !== 'number') return [value === 'live' ? 'live' : 'no steady reading', value === 'live' ? [] : [step[10]]];
    const count = Math.round(value / step[6]), unit = data.dials.find(d => d[0] === step[4]);
    const words = unit ? display({ digit: unit[2], high: unit[3], unit: unit[4] }, data.counts, value) : { text: '', unit: '' };
    const way = step[8].find(one => one[0] <= count && count <= one[1]);
    return [words.text + ' ' + words.unit, [count > step[7] ? step[9] : way ? way[2] : step[11]]];
  }
  function answer(key, seen) {
    const sight = data.sights.find(one => one[0] === key || one[2].indexOf(key) >= 0);
    const keys = sight && sight[0] === key && sight[3].length ? sight[2] : [key];
    if (!keys.some(one => seenIn.indexOf(one) >= 0)) return null;
    const shown = keys.findIndex(one => seen.indexOf(one) >= 0);
    return keys.length > 1 || keys[0] !== key ? shown < 0 ? '' : sight[3][shown].toLowerCase() : shown < 0 ? 'no' : 'yes';
  }
  function looked(step, at) {
    const seen = circuit.seen(at), answers = step[4].map(key => answer(key, seen));
    const fits = step[5].filter(way => {
      return way[0] && way[0].every((word, i) => word === 'any' || answers[i] === null || answers[i] === undefined || answers[i] === word);
    });
    const rest = step[5].filter(way => !way[0]), unknown = answers.some(one => one === null);
    const ways = (unknown || !fits.length ? fits.concat(rest) : fits.slice(0, 1)).map(way => way[1]);
    return [answers.map(one => one === null ? 'not simulated' : one).join(', '), ways];
  }
  // the quickest way from a step to a finding that names a fault of the round; null if there is none
  function from(tree, number, at, place, depth) {
    const step = data.trees[tree][5][number];
    if (!step || ++steps > MOST_STEPS || depth > DEEPEST) return null;
    const here = step[3] < 0 ? place : step[3], one = { title: data.titles[step[1]], minutes: step[2], words: '', walked: walk(place, here) };
    if (step[0] === FINDING) {
      return step[4].some(fault => round.faults.indexOf(fault) >= 0) ? [one] : null;
    }
    let next = at, targets = [];
    if (step[0] === TASK) {
      next = after(at, step);
      targets = [step[5]];
    } else {
      const found = step[0] === CHECK ? measured(step, at, here) : step[0] === SENSE ? looked(step, at) : ['', []];
      one.words = found[0];
      targets = found[1];
    }
    return targets.map(target => onward(tree, target, next, here, depth + 1)).reduce((best, rest) => {
      const way = rest && [one].concat(rest);
      return way && (!best || minutes(way) < minutes(best)) ? way : best;
    }, null);
  }
  function onward(tree, target, at, place, depth) {
    if (target === -1 || target === undefined) return null;
    if (typeof target === 'number') return from(tree, target, at, place, depth);
    const other = index[target[0]];
    return other === undefined || other === tree ? null : from(other, 0, circuit.settle(practice.start()), place, depth);
  }
  function walk(a, b) {
    const places = data.places.map(p => p[0]);
    return data.walks[1][Math.max(0, places.indexOf(a))][Math.max(0, places.indexOf(b))];
  }
  function minutes(way) {
    return way.reduce((sum, one) => sum + one.minutes + one.walked, 0);
  }
  const ways = data.trees.map((tree, i) => {
    steps = 0;
    const way = from(i, 0, circuit.settle(practice.start()), data.places[data.walks[0]][0], 0);
    return way && { tree: tree, way: way, minutes: minutes(way) };
  }).filter(Boolean);
  return ways.sort((a, b) => a.minutes - b.minutes)[0] || null;
}
