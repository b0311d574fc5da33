package rungbook.web.record;

import java.util.List;
import rungbook.web.record.FieldRecord.FollowedPack;

/** What a page sends from a phone: the record of a job, or the results of practice. */
public sealed interface Sent permits FieldRecord, PracticeResults {

  /**
   * @param text a file, a message, or what was read off QR pictures
   * @throws RecordFault with the place of what is wrong
   */
  static Sent read(String text) {
    var whole = Fields.of(RecordText.json(text));
    return PracticeReader.isPractice(whole) ? PracticeReader.read(whole) : RecordReader.read(whole);
  }

  /** 16 hexadecimal digits, the same when it comes again with more in it. */
  String id();

  /** Grows with what is in it: of two with one id the higher is newer. */
  int saves();

  List<FollowedPack> packs();

  /** Whether it came as QR pictures, which leave things out. */
  boolean isShort();
}
