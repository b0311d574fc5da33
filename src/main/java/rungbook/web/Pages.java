package rungbook.web;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;

/** Every page, checked against its template while the program is built. */
@CheckedTemplate
final class Pages {
  private Pages() {
  }

  static native TemplateInstance trouble(Trouble.Report report);
}
