package rungbook.pack;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import rungbook.browser.Browser;

/** One pack in a browser, read and walked as a person would: what counts is what can be seen. */
final class PackWalk {

  /**
   * A swipe moves three quarters of the screen, or less, so that no line is skipped between a bar and a dock that stay.
   * An element can be seen if no part of it is outside the screen or under something else.
   */
  private static final String TOOLS = """
      const high = innerHeight;
      function swipe() {
        const bar = document.querySelector('.bar'), dock = page().querySelector('.dock');
        const top = bar && getComputedStyle(bar).position === 'sticky' ? bar.getBoundingClientRect().bottom : 0;
        const low = dock && getComputedStyle(dock).position === 'sticky' ? Math.min(high, dock.getBoundingClientRect().top) : high;
        return Math.min(high * 0.75, low - top - 24);
      }
      function on(e, x, y) { const top = document.elementFromPoint(x, y); return !!top && (e.contains(top) || top.contains(e)); }
      function seen(e) {
        const r = e.getBoundingClientRect(), x = r.left + r.width / 2;
        return r.height > 0 && r.top >= 0 && r.bottom <= high + 1 && on(e, x, r.top + 3) && on(e, x, r.bottom - 3);
      }
      // whether its last line can be read, or was read on the way down; a text may be longer than the screen
      function ended(e) {
        const r = e.getBoundingClientRect();
        return r.bottom < 50 || (r.bottom <= high + 1 && on(e, r.left + r.width / 2, r.bottom - 3));
      }
      function page() { return document.querySelector('.page.on'); }
      function visible(e) { return !!e && e.getClientRects().length > 0; }
      function ways() { return [...page().querySelectorAll('.ways a')].filter(visible); }
      function settle() { for (const a of document.getAnimations()) a.finish(); }
      // how far down the end of an element is, in screens
      function down(e) {
        if (seen(e)) return e.getBoundingClientRect().bottom / high;
        scrollTo(0, 1e6);
        const r = (e.getBoundingClientRect().bottom + scrollY) / high;
        scrollTo(0, 0);
        return r;
      }
      // the links of a shortest way from the start to a step
      function pathTo(goal) {
        const before = new Map([[':start', null]]), queue = [':start'];
        for (const id of queue) {
          const begin = id === ':start' ? '.begin' : '.ways a[href^="#"]';
          for (const a of document.getElementById(id).querySelectorAll(begin)) {
            const to = document.getElementById(decodeURIComponent(a.hash.slice(1))).closest('.page').id;
            if (!before.has(to)) { before.set(to, [id, a]); queue.push(to); }
          }
        }
        const path = [];
        for (let at = goal; before.get(at); at = before.get(at)[0]) path.unshift(before.get(at)[1]);
        return path;
      }
      function release() { const hold = page().querySelector('.hold'); if (visible(hold)) { hold.click(); return 1; } return 0; }
      // the record of another way is none of this one
      function fresh() {
        dispatchEvent(new PopStateEvent('popstate', { state: { r: null, n: 0, d: 0 } }));
        document.querySelectorAll('.page.on .pairs input').forEach(e => e.checked = false);
      }
      """;

  private static final String CHECKS = TOOLS + """
      const found = [];
      for (const one of [...document.querySelectorAll('.page.check')]) {
        location.hash = '#:start';
        fresh();
        for (const a of pathTo(one.id)) { release(); a.click(); }
        settle();
        scrollTo(0, 0);
        const line = seen(page().querySelector('.measure'));
        release();
        const all = ways(), field = page().querySelector('.reading input');
        found.push({ id: one.id, measure: line && seen(page().querySelector('.measure')), field: field && seen(field),
          first: seen(all[0]), all: all.every(seen), last: down(all[all.length - 1]) });
      }
      return found;
      """;

  private static final String START = TOOLS + "scrollTo(0, 0); return down(document.querySelector('.begin'));";

  private static final String FINDINGS = "return [...document.querySelectorAll('.page.finding')].map(e => e.id);";

  /** Along a shortest path of links. At a check the measure line is read, elsewhere the whole text of the step. */
  private static final String WALK = TOOLS + """
      const path = pathTo(arguments[0]);
      let taps = 0, swipes = 0, ticks = 0;
      function bring(e) {
        for (let tries = 0; visible(e) && !ended(e) && tries < 30; tries++) {
          const was = scrollY;
          scrollBy(0, swipe());
          if (scrollY !== was) swipes++; else break;
        }
      }
      for (const a of path) {
        settle();
        if (page().id !== ':start') {
          const text = page().matches('.check') ? [page().querySelector('.measure')]
            : [...page().querySelectorAll('.words > *, .actions > li, .concluded')].filter(visible);
          text.forEach(bring);
          ticks += page().querySelectorAll('.pairs input').length;
          page().querySelectorAll('.pairs input').forEach(e => e.click());
          taps += release();
        }
        bring(a);
        taps++;
        a.click();
      }
      return { steps: path.length, taps, swipes, ticks };
      """;

  private final Browser browser;

  private PackWalk(Browser browser) {
    this.browser = browser;
  }

  static PackWalk open(Browser browser, Path pack) {
    browser.open("about:blank").open(pack).until("document.querySelector('.page.on')");
    return new PackWalk(browser);
  }

  /** How far down START is, in screens. */
  double startScreens() {
    return ((Number) browser.run(START)).doubleValue();
  }

  /** What can be seen at each check as it opens. */
  List<Map<?, ?>> checks() {
    return ((List<?>) browser.run(CHECKS)).stream().<Map<?, ?>>map(check -> (Map<?, ?>) check).toList();
  }

  /** The ids of the findings, in the order of the text. */
  List<?> findings() {
    return (List<?>) browser.run(FINDINGS);
  }

  /** Walks to a finding: {@code steps}, {@code taps}, {@code swipes}, {@code ticks}. */
  Map<?, ?> to(String finding) {
    return (Map<?, ?>) browser.run(WALK, finding);
  }
}
