package rungbook.web.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rungbook.ladder.Ladder;
import rungbook.library.Library;
import rungbook.library.LibraryText;
import rungbook.markdown.Document;
import rungbook.markdown.DocumentReader;
import rungbook.markdown.Entry;
import rungbook.markdown.Prose;
import rungbook.source.Source;
import rungbook.store.Store;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.Revision;
import rungbook.text.English;
import rungbook.text.UrlPath;
import rungbook.web.http.ProblemException;
import rungbook.web.service.CheckedLibrary;
import rungbook.web.service.CircuitService;
import rungbook.web.service.CompiledLibrary;
import rungbook.web.service.DocumentEntry;
import rungbook.web.service.Requests;
import rungbook.web.views.CircuitView;
import rungbook.web.views.CircuitViews;
import rungbook.web.views.PageLinks;
import rungbook.web.views.ProblemView;

/** The list of shared texts, and the page of one text. */
@Path("/")
@Produces(MediaType.TEXT_HTML)
class SharedPage {
  private static final String SYSTEMS = "shared/systems/";
  private static final List<String> LINES = List.of("hazard", "avoid", "rule", "covers");
  private final CompiledLibrary library;
  private final Store store;

  private final CircuitService circuits;

  SharedPage(CompiledLibrary library, Store store, CircuitService circuits) {
    this.library = library;
    this.store = store;
    this.circuits = circuits;
  }

  record Folder(String path, String title, String about, List<Item> items) {}

  /** @param level a caution's level; empty for anything else */
  record Item(String path, String title, String level) {
    public String href() {
      return "/text/" + UrlPath.of(path);
    }

    /** Where a system's page asks for a reading. */
    public String answers() {
      return "/read/" + UrlPath.of(path);
    }

    /** Where a system's practice page is. */
    public String practice() {
      return "/api/practice/" + system();
    }

    /** Where a system's pocket card is. */
    public String card() {
      return "/api/cards/" + system();
    }

    private String system() {
      return UrlPath.part(path.substring(path.lastIndexOf('/') + 1, path.lastIndexOf(".md")));
    }
  }

  /** A line of the front matter that a reader needs. */
  record Line(String name, String words) {}

  /** @param circuit of a system that can be solved */
  record TextView(Item item, String href, List<Line> lines, String prose, List<ProblemView> problems,
      DocumentEntry revision, boolean isNewest, Optional<CircuitView> circuit) {}

  /** @param words the list of words to avoid; empty if the library has none */
  record ListView(List<Folder> folders, Optional<Item> words, CheckedLibrary checked) {}

  @CheckedTemplate(basePath = "")
  static final class Templates {
    private Templates() {}

    static native TemplateInstance shared(ListView shared);

    static native TemplateInstance text(TextView text);

    static native TemplateInstance read(CircuitView.Answered answered);
  }

  @GET
  @Path("shared")
  public TemplateInstance list() {
    var checked = library.checked();
    var text = checked.library().text();
    return Templates.shared(new ListView(Stream.of(
        folder(text, "cautions", "Cautions", "What can hurt, named by every step where it can"),
        folder(text, "qualifications", "Qualifications",
            "What a person must hold to do a step, and the rule that asks for it"),
        folder(text, "systems", "Systems",
            "Locations, points, controls and faults that trees name; the circuit that proves them"),
        folder(text, "meters", "Meters", "What a meter can show, and how well"),
        folder(text, "fragments", "Fragments", "Steps that many trees take in, such as making a unit dead")).toList(),
        Optional.ofNullable(text.texts().get(DocumentPath.WORDS.text())).map(SharedPage::item), checked));
  }

  private static Folder folder(LibraryText text, String name, String title, String about) {
    var path = "shared/" + name + "/";
    return new Folder(path, title, about,
        text.in(path).values().stream().map(SharedPage::item).toList());
  }

  private static Item item(Source source) {
    var document = DocumentReader.read(source);
    return new Item(source.name(), document.front("title").map(Entry::value).orElse(source.name()),
        document.front("level").map(Entry::value).orElse(""));
  }

  @GET
  @Path("text/{path:.+}")
  public TemplateInstance show(String path, @Context UriInfo address) {
    var at = Requests.path(path);
    var revision = Requests.head(store, at);
    return Templates.text(view(revision, new ReadingFields(address.getQueryParameters())));
  }

  @GET
  @Path("read/{path:.+}")
  public TemplateInstance read(String path, @Context UriInfo address) {
    var checked = library.checked().library();
    var at = Requests.path(path).text();
    return Templates.read(system(at, checked)
        .flatMap(system -> answered(system, new ReadingFields(address.getQueryParameters()), checked))
        .orElseThrow(() -> ProblemException.notFound("`" + at + "` has no circuit to read",
            "choose a system whose page shows a ladder")));
  }

  /** A system as the last checked library has it. */
  private record SystemText(String id, Source source) {}

  private static Optional<SystemText> system(String path, Library checked) {
    return Optional.ofNullable(checked.text().texts().get(path)).filter(source -> path.startsWith(SYSTEMS))
        .map(source -> new SystemText(path.substring(SYSTEMS.length(), path.length() - ".md".length()), source));
  }

  /** Empty if its circuit cannot be solved. */
  private Optional<CircuitView> circuit(SystemText system, ReadingFields asked, Library checked) {
    var form = asked.form();
    if (!asked.isAsked()) {
      circuits.solveAhead(system.id(), checked);
    }
    return answered(system, asked, checked).flatMap(answered -> circuits.system(system.id(), system.source())
        .flatMap(systems -> circuits.table(system.id(), system.source())
            .map(table -> CircuitViews.of(systems.base(), ladder(system, ""), table,
                form.fields(systems, checked.text().in("shared/meters/").keySet()), answered))));
  }

  private Optional<CircuitView.Answered> answered(SystemText system, ReadingFields asked, Library checked) {
    var form = asked.form();
    return circuits.system(system.id(), system.source())
        .map(systems -> CircuitViews.answered(asked.isAsked()
            ? Optional.of(circuits.answer(system.id(), form.meter(), form.request(), checked)) : Optional.empty(),
            variant -> ladder(system, variant)));
  }

  private Ladder ladder(SystemText system, String variant) {
    return circuits.ladder(system.id(), system.source(), variant).orElseThrow();
  }

  private static List<Line> lines(Document document) {
    return LINES.stream().flatMap(key -> document.front(key).stream()).filter(entry -> !entry.value().isEmpty())
        .map(entry -> new Line(English.capital(entry.key()), entry.value())).toList();
  }

  private TextView view(Revision revision, ReadingFields asked) {
    var path = revision.path().text();
    var source = new Source(path, revision.text());
    var checked = library.checked();
    var document = DocumentReader.read(source);
    return new TextView(item(source), UrlPath.of(path), lines(document),
        Prose.of(document, new PageLinks(path)).whole(),
        ProblemView.of(library.found(revision.path()).shown()), DocumentEntry.of(revision), checked.isNewest(),
        system(path, checked.library()).flatMap(system -> circuit(system, asked, checked.library())));
  }
}
