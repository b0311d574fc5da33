package rungbook.pack;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import rungbook.browser.Browser;
import rungbook.markdown.DocumentReader;
import rungbook.pack.page.Edition;
import rungbook.source.Source;
import rungbook.tree.Tree;
import rungbook.tree.reader.TreeReader;

/**
 * How fast a pack of many steps opens and answers a tap on a phone six times slower than this machine. Prints
 * milliseconds.
 * Run:
 * {@code mvn -q test-compile exec:exec -Dbench.main=rungbook.pack.TapBench -Dbench=500}, the last being the number of
 * steps, or the file of a pack or of a library.
 */
public final class TapBench {

  private static final int TAPS = 40;
  private static final int SLOWER = 6;

  /**
   * From the tap to the picture after it, so many times; at the end of a short chain the walk starts again before the
   * clock does. One script for all of them, so that the driver's own work is not counted.
   */
  private static final String TAPS_TO_PICTURES = """
      const done = arguments[arguments.length - 1], took = [], count = arguments[0];
      const ways = () => document.querySelector('.page.on .ways a');
      function again() {
        if (took.length === count) return done(took);
        if (!ways()) [...document.querySelectorAll('.menu .tools button')].pop().click();
        setTimeout(tap, 250);
      }
      function tap() {
        const start = performance.now(), c = new MessageChannel();
        c.port1.onmessage = () => { took.push(performance.now() - start); again(); };
        ways().click();
        requestAnimationFrame(() => c.port2.postMessage(0));
      }
      again();""";

  private TapBench() {}

  public static void main(String[] arguments) throws IOException {
    if (arguments[0].endsWith(".html")) {
      Path file = Path.of(arguments[0]);
      try (Browser browser = Browser.start().size(360, 740).slowedBy(SLOWER)) {
        measure(browser, file, (int) Files.size(file));
      }
    } else {
      chain(Integer.parseInt(arguments[0]));
    }
  }

  private static void chain(int steps) throws IOException {
    Tree tree = TreeReader.read("chain",
        DocumentReader.read(new Source("trees/chain.md", rungbook.bench.Samples.tree(steps))),
        Samples.MATERIAL.shared()).tree();
    byte[] pack = Samples.pack(tree, Edition.draft()).bytes();
    Path file = Files.write(Files.createTempFile("chain", ".html"), pack);
    try (Browser browser = Browser.start().size(360, 740).slowedBy(SLOWER)) {
      measure(browser, file, pack.length);
    } finally {
      Files.delete(file);
    }
  }

  private static void measure(Browser browser, Path file, int bytes) {
    browser.open(file).until("document.readyState == 'complete' && document.querySelector('.page.on')");
    double painted = milliseconds(browser, "return performance.getEntriesByType('paint')[0].startTime");
    double opened = milliseconds(browser,
        "return performance.getEntriesByType('navigation')[0].domContentLoadedEventEnd");
    browser.cdp("Performance.enable", Map.of("timeDomain", "threadTicks"));
    double before = workedMs(browser);
    double[] taps = ((List<?>) browser.driver().executeAsyncScript(TAPS_TO_PICTURES, TAPS)).stream()
        .mapToDouble(took -> ((Number) took).doubleValue()).toArray();
    double worked = (workedMs(browser) - before) / TAPS;
    Arrays.sort(taps);
    System.out.printf(Locale.ROOT, "%.0f steps, %d bytes, processor slowed %d-fold%n"
        + "first painted after %.0f ms, ready after %.0f ms; tap to picture: median %.0f ms, worst of %d %.0f ms; "
        + "the page's own thread worked %.0f ms a tap%n",
        milliseconds(browser, "return document.querySelectorAll('.page.step').length"), bytes, SLOWER,
        painted, opened, taps[TAPS / 2], TAPS, taps[TAPS - 1], worked);
  }

  private static double milliseconds(Browser browser, String script) {
    return ((Number) browser.run(script)).doubleValue();
  }

  /** What the page's main thread has worked so far; unlike the clock it does not count waiting for a busy machine. */
  private static double workedMs(Browser browser) {
    var metrics = (List<?>) browser.cdp("Performance.getMetrics", Map.of()).get("metrics");
    return metrics.stream().map(Map.class::cast).filter(metric -> metric.get("name").equals("TaskDuration"))
        .mapToDouble(metric -> ((Number) metric.get("value")).doubleValue() * 1000).sum();
  }
}
