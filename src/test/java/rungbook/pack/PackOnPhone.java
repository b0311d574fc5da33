package rungbook.pack;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.StreamSupport;
import rungbook.browser.Browser;

/** A folder with two packs in a browser, pressed as a person would. The example leads on to the other one. */
final class PackOnPhone {

  static final String OTHER = "no-cooling-blower-runs";

  /** The ways from where the example opens the unit into the other tree. */
  static final List<Integer> TO_THE_OTHER = List.of(0, 1, 1, 0);

  /** Whether the page has taken up a record: an expression in the page. */
  static final String HAS_RECORD = "document.documentElement.matches('.live') && history.state.r";

  private final Browser browser;
  private final Path folder;

  PackOnPhone(Browser browser, Path folder) {
    this.browser = browser.networkCut().size(360, 740);
    this.folder = folder;
  }

  static void write(Path folder) throws IOException {
    for (PackFile file : LibraryFolder.of(List.of(Samples.example(), Samples.starter(OTHER)), List.of(), List.of())) {
      Files.write(folder.resolve(file.name()), file.bytes());
    }
  }

  Browser browser() {
    return browser;
  }

  String address(String tree, String step) {
    return folder.resolve(tree + ".html").toUri() + (step.isEmpty() ? "" : "#" + step);
  }

  PackOnPhone open(String tree, String step) {
    browser.open("about:blank").open(address(tree, step)).until("document.querySelector('.page.on')");
    return this;
  }

  /** A button that can be seen, by what its words begin with. */
  PackOnPhone press(String words) {
    browser.until("[...document.querySelectorAll('button')].find(b => b.getClientRects().length && "
        + "b.textContent.startsWith('" + words + "'))");
    browser.run("[...document.querySelectorAll('button')].find(b => b.getClientRects().length && "
        + "b.textContent.startsWith(arguments[0])).click()", words);
    return this;
  }

  /** A way on, from 0, after the hold where there is one. */
  PackOnPhone way(int index) {
    browser.run("""
        const hold = document.querySelector('.on .hold');
        if (hold) hold.click();
        document.querySelectorAll('.on .way')[arguments[0]].click()""", index);
    return this;
  }

  PackOnPhone ways(List<Integer> all) {
    all.forEach(this::way);
    return this;
  }

  PackOnPhone type(String reading) {
    browser.run("""
        const hold = document.querySelector('.on .hold'), input = document.querySelector('.on .reading input');
        if (hold) hold.click();
        input.value = arguments[0];
        input.oninput();""", reading);
    return this;
  }

  PackOnPhone showRecord() {
    browser.run("[...document.querySelectorAll('.menu button')].find(b => b.textContent.startsWith('Field')).click()");
    return this;
  }

  PackOnPhone job(String words) {
    browser.find(".record .field input").sendKeys(words);
    return this;
  }

  String step() {
    return (String) browser.run("return document.querySelector('.page.on').id");
  }

  String text(String selector) {
    return browser.find(selector).getText();
  }

  /** As the address or the phone's storage has it. */
  String record() {
    return (String) browser.run("""
        const carried = location.hash.split('~')[1];
        if (carried) return decodeURIComponent(escape(atob(carried.replace(/-/g, '+').replace(/_/g, '/'))));
        const own = history.state && localStorage.getItem('rungbook-record-' + history.state.r);
        return own || Object.values(localStorage).filter(text => text.includes('"saved"'))
          .sort((one, other) => JSON.parse(one).saved < JSON.parse(other).saved ? 1 : -1)[0];""");
  }

  JsonNode json() {
    try {
      return new ObjectMapper().readTree(record());
    } catch (JsonProcessingException e) {
      throw new AssertionError(e);
    }
  }

  /** The answered steps, {@code example/open-the-unit}. */
  List<String> answered() {
    return StreamSupport.stream(json().get("steps").spliterator(), false)
        .map(step -> step.get("tree").asText() + "/" + step.get("step").asText()).toList();
  }
}
