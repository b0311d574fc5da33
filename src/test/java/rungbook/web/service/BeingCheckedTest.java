package rungbook.web.service;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;

import io.quarkus.test.junit.QuarkusMock;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungbook.store.Store;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.Save;

/** What a page shows between a save and its check. */
@Tag("server")
@QuarkusTest
class BeingCheckedTest {
  private static final DocumentPath TREE = new DocumentPath("trees/no-cooling-blower-runs.md");
  private static final String NOTICE = "A newer save is being checked.";
  @Inject
  Store store;
  @Inject
  CompiledLibrary library;

  /** One whose check takes forever: the last library is the one that another has now. */
  private static final class Slow extends CompiledLibrary {
    private final CheckedLibrary last;

    Slow(Store store, CheckedLibrary last) {
      super(store);
      this.last = new CheckedLibrary(last.library(), last.heads(), false);
    }

    @Override
    public CheckedLibrary checked() {
      return last;
    }

    @Override
    boolean isBehind() {
      return true;
    }
  }

  private void makeSlow() {
    QuarkusMock.installMockForType(new Slow(store, library.newest()), CompiledLibrary.class);
  }

  @ParameterizedTest
  @ValueSource(strings = {"/", "/?q=blower", "/shared", "/text/shared/cautions/gas.md",
      "/tree/trees/no-cooling-blower-runs.md", "/proof/trees/no-cooling-blower-runs.md"})
  void everyPageOfTheLastLibrarySaysSo(String page) {
    library.newest();
    given().accept("text/html").get(page).then().statusCode(200).body(not(containsString(NOTICE)))
        .header("Rungbook-Being-Checked", nullValue());
    makeSlow();
    given().accept("text/html").get(page).then().statusCode(200).body(containsString(NOTICE))
        .header("Rungbook-Being-Checked", equalTo("true"));
  }

  @Test
  void aTreesPageShowsTheSavedTextAndSaysWhichRevisionThePackHas() {
    makeSlow();
    var head = store.head(TREE).orElseThrow();
    store.save(Save.text(TREE, head.number(), head.text() + "\nSaid just now.\n", "Odalys", ""));
    given().accept("text/html").get("/tree/" + TREE).then().statusCode(200).body(containsString("Said just now."))
        .body(containsString("Below is revision " + (head.number() + 1)))
        .body(containsString("The pack is still of revision " + head.number()));
    given().get("/api/packs/" + TREE).then().statusCode(200).body(not(containsString("Said just now.")));
  }
}
