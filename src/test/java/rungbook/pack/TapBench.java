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
 * steps.
 */
public final class TapBench {

  private static final int TAPS = 40;
  private static final int SLOWER = 6;

  /** From the tap to the picture after it; at the end of a short chain the walk starts again before the clock does. */
  private static final String TAP = """
      if (!document.querySelector('.page.on .ways a')) [...document.querySelectorAll('.menu .tools button')].pop().click();
      const done = arguments[arguments.length - 1], start = performance.now();
      document.querySelector('.page.on .ways a').click();
      requestAnimationFrame(() => { const c = new MessageChannel(); c.port1.onmessage = () => done(performance.now() - start); c.port2.postMessage(0); });""";

  private TapBench() {}

  public static void main(String[] arguments) throws IOException {
    Tree tree = TreeReader.read("chain",
        DocumentReader.read(new Source("trees/chain.md", rungbook.bench.Samples.tree(Integer.parseInt(arguments[0])))),
        Samples.MATERIAL.shared()).tree();
    byte[] pack = Samples.pack(tree, Edition.draft()).bytes();
    Path file = Files.write(Files.createTempFile("chain", ".html"), pack);
    try (Browser browser = Browser.start().size(360, 740).slowedBy(SLOWER)) {
      measure(browser, file, tree.steps().size(), pack.length);
    } finally {
      Files.delete(file);
    }
  }

  private static void measure(Browser browser, Path file, int steps, int bytes) {
    browser.open(file).until("document.readyState == 'complete' && document.querySelector('.page.on')");
    double opened = ((Number) browser
        .run("return performance.getEntriesByType('navigation')[0].domContentLoadedEventEnd")).doubleValue();
    browser.cdp("Performance.enable", Map.of("timeDomain", "threadTicks"));
    double before = workedMs(browser);
    double[] taps = new double[TAPS];
    for (int tap = 0; tap < TAPS; tap++) {
      taps[tap] = ((Number) browser.driver().executeAsyncScript(TAP)).doubleValue();
    }
    double worked = (workedMs(browser) - before) / TAPS;
    Arrays.sort(taps);
    System.out.printf(Locale.ROOT, "%d steps, %d bytes, processor slowed %d-fold%n"
        + "opened in %.0f ms; tap to picture: median %.0f ms, worst of %d %.0f ms; the page's own thread worked "
        + "%.0f ms a tap%n",
        steps, bytes, SLOWER, opened, taps[TAPS / 2], TAPS, taps[TAPS - 1], worked);
  }

  /** What the page's main thread has worked so far; unlike the clock it does not count waiting for a busy machine. */
  private static double workedMs(Browser browser) {
    var metrics = (List<?>) browser.cdp("Performance.getMetrics", Map.of()).get("metrics");
    return metrics.stream().map(Map.class::cast).filter(metric -> metric.get("name").equals("TaskDuration"))
        .mapToDouble(metric -> ((Number) metric.get("value")).doubleValue() * 1000).sum();
  }
}
