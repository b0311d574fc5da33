package rungbook.pack.book;

import com.adobe.epubcheck.api.EPUBLocation;
import com.adobe.epubcheck.api.EpubCheck;
import com.adobe.epubcheck.api.MasterReport;
import com.adobe.epubcheck.messages.Message;
import com.adobe.epubcheck.messages.Severity;
import com.adobe.epubcheck.util.FeatureEnum;
import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;

/** EPUBCheck, the reference checker of the format: what it finds in a book that is more than a usage note. */
final class BookCheck extends MasterReport {

  private final List<String> found = new ArrayList<>();

  private BookCheck() {}

  static List<String> of(byte[] book) {
    var report = new BookCheck();
    new EpubCheck(new ByteArrayInputStream(book), report, "book.epub").doValidate();
    return report.found;
  }

  @Override
  public void message(Message message, EPUBLocation place, Object... facts) {
    if (message.getSeverity() == Severity.FATAL || message.getSeverity() == Severity.ERROR
        || message.getSeverity() == Severity.WARNING) {
      found.add(message.getSeverity() + " " + place + " " + message.getMessage(facts));
    }
  }

  @Override
  public void info(String resource, FeatureEnum feature, String value) {}

  @Override
  public int generate() {
    return 0;
  }

  @Override
  public void initialize() {}
}
