package rungbook.report.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import rungbook.proof.report.Complaint;
import rungbook.tree.NameRef;
import rungbook.tree.Symptoms;

/** Which faults a tree is for, as JSON. */
final class ProofJsonComplaint {

  private ProofJsonComplaint() {}

  static void write(JsonGenerator json, Complaint complaint) throws IOException {
    json.writeBooleanField("stated", complaint.symptoms().isPresent());
    if (complaint.symptoms().isPresent()) {
      write(json, complaint.symptoms().get());
    }
    json.writeNumberField("likelihood", complaint.likelihood());
    json.writeNumberField("healthy", complaint.healthy());
    Json.array(json, "uncovered", array -> {
      for (Complaint.Uncovered one : complaint.uncovered()) {
        Json.item(array, item -> {
          item.writeStringField("case", one.fault());
          item.writeNumberField("likelihood", one.likelihood());
        });
      }
    });
  }

  private static void write(JsonGenerator json, Symptoms symptoms) throws IOException {
    write(json, "call", symptoms.call().stream().map(Symptoms.Called::toString).toList());
    write(json, "seen", symptoms.seen().stream().map(NameRef::text).toList());
    write(json, "notSeen", symptoms.notSeen().stream().map(NameRef::text).toList());
    write(json, "notAllSeen", symptoms.notAllSeen().stream().map(NameRef::text).toList());
  }

  private static void write(JsonGenerator json, String name, List<String> words) throws IOException {
    Json.array(json, name, array -> {
      for (String word : words) {
        array.writeString(word);
      }
    });
  }
}
