package rungbook.web.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import java.util.List;

/** Every page, checked against its template while the program is built. */
@CheckedTemplate
public final class Pages {
  private Pages() {}

  static native TemplateInstance library(LibraryPage.View library);

  static native TemplateInstance tree(TreePage.View tree);

  static native TemplateInstance proof(ProofPage.View page);

  static native TemplateInstance edit(EditPage.View edit);

  static native TemplateInstance newTree(EditPage.NewView choice);

  static native TemplateInstance history(HistoryPage.View history);

  static native TemplateInstance shared(List<SharedPage.Folder> folders);

  static native TemplateInstance text(SharedPage.TextView text);

  static native TemplateInstance transfer(TransferPage.View transfer);

  static native TemplateInstance help();
}
