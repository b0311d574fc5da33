package rungbook.pack;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import rungbook.browser.Browser;

/**
 * What is on the screen of a phone of 360x740 px without scrolling, at every check and on every start page, and how
 * many taps and swipes a diagnosis takes. Opens packs of any edition, so it compares two of them. Run:
 * {@code ./rungbook pack trees --to /tmp/packs} and
 * {@code mvn -q test-compile exec:exec -Dbench.main=rungbook.pack.StepScreensBench -Dbench=/tmp/packs}.
 */
public final class StepScreensBench {

  private static final int WIDTH = 360;
  private static final int HEIGHT = 740;

  /** The first and the last finding of each tree, as far as two are there. */
  private static final int DIAGNOSES_A_TREE = 2;

  private StepScreensBench() {}

  public static void main(String[] arguments) throws IOException {
    try (Browser browser = Browser.start().size(WIDTH, HEIGHT);
        Stream<Path> files = Files.list(Path.of(arguments[0]))) {
      List<Path> packs = files.filter(StepScreensBench::isPack).sorted().toList();
      screens(browser, packs);
      diagnoses(browser, packs);
    }
  }

  private static boolean isPack(Path file) {
    return file.toString().endsWith(".html") && !file.endsWith("index.html");
  }

  private static void screens(Browser browser, List<Path> packs) {
    var starts = new ArrayList<Double>();
    var checks = new ArrayList<Map<?, ?>>();
    for (Path pack : packs) {
      PackWalk walk = PackWalk.open(browser, pack);
      starts.add(walk.startScreens());
      checks.addAll(walk.checks());
    }
    System.out.printf(Locale.ROOT, "%d packs; START in the first screen: %d; median %.2f screens down%n",
        packs.size(), starts.stream().filter(screens -> screens <= 1).count(), median(starts));
    System.out.printf("%d checks; measure line visible: %d; first way visible: %d; all ways visible: %d%n",
        checks.size(), count(checks, "measure"), count(checks, "first"), count(checks, "all"));
    System.out.printf("%d readings; field visible: %d%n",
        checks.stream().filter(check -> check.get("field") != null).count(), count(checks, "field"));
    System.out.printf(Locale.ROOT, "last way: median %.2f screens down%n",
        median(checks.stream().map(check -> ((Number) check.get("last")).doubleValue()).toList()));
    checks.stream().filter(check -> !Boolean.TRUE.equals(check.get("measure")))
        .forEach(check -> System.out.println("measure line not visible: " + check.get("id")));
  }

  private static long count(List<Map<?, ?>> checks, String what) {
    return checks.stream().filter(check -> Boolean.TRUE.equals(check.get(what))).count();
  }

  private static double median(List<Double> numbers) {
    return numbers.stream().sorted().skip(numbers.size() / 2).findFirst().orElseThrow();
  }

  private static void diagnoses(Browser browser, List<Path> packs) {
    long diagnoses = 0;
    long taps = 0;
    long swipes = 0;
    long ticks = 0;
    for (Path pack : packs) {
      List<?> findings = PackWalk.open(browser, pack).findings();
      int first = Math.max(0, findings.size() - DIAGNOSES_A_TREE + 1);
      for (Object finding : Stream.concat(findings.stream().limit(1), findings.stream().skip(Math.max(1, first)))
          .toList()) {
        Map<?, ?> counted = PackWalk.open(browser, pack).to((String) finding);
        diagnoses++;
        taps += (Long) counted.get("taps");
        swipes += (Long) counted.get("swipes");
        ticks += (Long) counted.get("ticks");
        System.out.println(pack.getFileName() + " " + finding + " " + counted);
      }
    }
    System.out.printf("%d diagnoses: %d taps, %d swipes, together %d; and %d ticks at points to prove dead%n",
        diagnoses,
        taps, swipes, taps + swipes, ticks);
  }
}
