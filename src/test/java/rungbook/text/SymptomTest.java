package rungbook.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import rungbook.library.StarterLibrary;
import rungbook.tree.Tree;

class SymptomTest {

  @Test
  void everyStarterTreeHasAButtonAndEveryButtonHasATree() {
    Set<Integer> found = new TreeSet<>();
    for (Tree tree : StarterLibrary.LIBRARY.trees().stream().map(one -> one.tree()).toList()) {
      List<Integer> symptoms = Symptom.in(tree.complaint());
      assertFalse(symptoms.isEmpty(), tree.complaint());
      found.addAll(symptoms);
    }
    assertEquals(Symptom.ALL.size(), found.size());
  }

  @Test
  void complaintHasTheSymptomsThatItSays() {
    assertEquals(List.of("No cooling"), words("The vents blow but the air is not cold."));
    assertEquals(List.of("Does not stop"), words("The fan never stops."));
    assertEquals(List.of("Noise"), words("It is buzzing."));
    assertEquals(List.of(), words("It smells odd."));
  }

  private static List<String> words(String complaint) {
    return Symptom.in(complaint).stream().map(index -> Symptom.ALL.get(index).words()).toList();
  }
}
