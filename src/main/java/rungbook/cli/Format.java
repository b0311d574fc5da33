package rungbook.cli;

import rungbook.report.JsonReport;
import rungbook.report.Report;
import rungbook.report.SarifReport;
import rungbook.report.Style;
import rungbook.report.TextReport;

/** How problems are printed. */
enum Format {
  text,
  json,
  sarif;

  String print(Report report, Style style) {
    return switch (this) {
      case text -> TextReport.of(report, style);
      case json -> JsonReport.of(report);
      case sarif -> SarifReport.of(report, Rungbook.Version.text());
    };
  }
}
