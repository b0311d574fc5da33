package rungbook.cli;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import rungbook.report.Report;
import rungbook.report.Style;
import rungbook.report.TextReport;
import rungbook.report.json.JsonReport;
import rungbook.report.json.SarifReport;
import rungbook.source.Nearest;

/** The output formats. */
enum Format {
  TEXT,
  JSON,
  SARIF;

  static Format named(String written) {
    List<String> names = Stream.of(values()).map(format -> format.name().toLowerCase(Locale.ROOT)).toList();
    int at = names.indexOf(written);
    if (at < 0) {
      throw new UsageError("unknown format `" + written + "`",
          Nearest.to(written, names).map(near -> "write `" + near + "`")
              .orElse("write one of " + String.join(", ", names)));
    }
    return values()[at];
  }

  String print(Report report, Style style) {
    return switch (this) {
      case TEXT -> TextReport.of(report, style);
      case JSON -> JsonReport.of(report);
      case SARIF -> SarifReport.of(report, Rungbook.Version.text());
    };
  }
}
