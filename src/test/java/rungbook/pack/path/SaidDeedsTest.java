package rungbook.pack.path;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungbook.pack.Samples;
import rungbook.tree.Action;

/** A deed counts as said only where the words say what is done and to what. */
class SaidDeedsTest {

  private static List<Action> actions(String lines) {
    return Samples.tree("""
        ---
        title: Sample
        complaint: Nothing yet
        system: split-cooling-gas-furnace
        ---

        ## Do it

        ```task
        %s
        ```

        - done: [Fine](#fine)

        ## Fine

        ```finding
        healthy: yes
        ```
        """.formatted(lines)).steps().get(0).actions();
  }

  /** The actions that the words do not say. */
  private static List<String> left(String lines, String words) {
    return left(lines, "Sample step", words);
  }

  private static List<String> left(String lines, String title, String words) {
    List<Action> actions = actions(lines);
    var said = new SaidDeeds(title, "<p>" + words + "</p>");
    return IntStream.range(0, actions.size()).filter(number -> !said.has(actions, number)).mapToObj(actions::get)
        .map(action -> action.kind().words() + ": " + action.thing().text()).toList();
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      // the object alone, in whatever role
      "discharge: run capacitor | The run capacitor is beside the contactor.",
      "discharge: run capacitor | Read the microfarads of the run capacitor.",
      "isolate: outdoor disconnect | Stand beside the outdoor disconnect.",
      "try: outdoor disconnect | Pull the disconnect and lock it.",
      "replace: contactor | Photograph the wires of the contactor.",
      "replace: contactor | Use a contactor of the same coil voltage.",
      "open: electrical cover | The cover is held by two screws.",
      "restore: blower door | The blower door hides the switch.",
      // the verb alone, or for something else
      "discharge: run capacitor | Discharge it and read under 1 V.",
      "isolate: outdoor disconnect | Pull the wires at the outdoor disconnect. Lock the cover.",
      "isolate: outdoor disconnect | Pull the furnace disconnect. Lock and tag it.",
      "replace: contactor | Replace the contactor coil.",
      "restore: outdoor disconnect | Put your lock on the disconnect.",
      "restore: blower door | Put the meter on the floor beside the blower door.",
      "isolate: furnace switch | Turn the door switch off and lock it.",
      // one of two parts
      "isolate: outdoor disconnect | Pull the disconnect.",
      "tag out: outdoor disconnect | Lock the disconnect.",
      "discharge: run capacitor | Discharge the run capacitor.",
      "tag out: outdoor disconnect | Tag the breaker and lock the disconnect.",
      // no instruction
      "isolate: outdoor disconnect | Do not pull the disconnect or lock it.",
      "isolate: outdoor disconnect | If the fan still runs, pull the disconnect and lock it.",
      "isolate: outdoor disconnect | Does it run? Then pull the disconnect and lock it.",
      "isolate: outdoor disconnect | Is the disconnect pulled and locked?",
      "isolate: outdoor disconnect | You pull the disconnect and lock it in the next step.",
      "isolate: outdoor disconnect | Nobody works here before you pull the disconnect and lock it.",
      "isolate: outdoor disconnect | Call a senior, or pull the disconnect and lock it.",
      "isolate: outdoor disconnect | Phone somebody to pull the disconnect and lock it.",
      "tag out: outdoor disconnect | Your lock and tag stay on the disconnect.",
      // a control, and another position
      "set: thermostat cooling | Set the thermostat to off.",
      "set: thermostat off | The thermostat is off, so nothing starts.",
      "set: thermostat off | Set the fan to off and look at the thermostat."})
  void notSaid(String line, String words) {
    assertEquals(1, left(line, words).size(), words);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "discharge: run capacitor | Short the run capacitor with a resistor. Then read under 1 V DC.",
      "discharge: run capacitor | Bleed the run capacitor, and prove it flat.",
      "isolate: outdoor disconnect | Stand to the side and pull the disconnect. Lock and tag it.",
      "isolate: furnace switch | Switch the furnace off. Lock and tag the switch.",
      "isolate: outdoor disconnect | Turn off the outdoor disconnect and lock it.",
      "try: outdoor disconnect | The disconnect is out. Try it: nothing starts.",
      "try: outdoor disconnect | Try the outdoor disconnect with a call on.",
      "tag out: outdoor disconnect | Put your lock and tag on the disconnect. Tag it.",
      "open: electrical cover | Take the electrical cover off, if it is still on.",
      "restore: blower door | Put the blower door on with all its screws.",
      "restore: door switch | With gloves on, pull the tape off the door switch.",
      "restore: outdoor disconnect | Take your lock off. Stand to the side and push the disconnect in.",
      "bypass: door switch | Tape the plunger of the door switch in.",
      "replace: contactor | Replace the contactor with one of the same coil voltage.",
      "set: thermostat cooling | Call for cooling.",
      "set: thermostat off | Thermostat off, and wait.",
      "set: thermostat heating | Set the thermostat to heat, five degrees above the room."})
  void said(String line, String words) {
    assertEquals(List.of(), left(line, words));
  }

  @Test
  void titleIsOfTheAuthorsWords() {
    assertEquals(List.of(), left("replace: contactor", "Replace the contactor", "Tug each wire."));
    assertEquals(1, left("replace: contactor", "Contactor out", "Tug each wire.").size());
  }

  @Test
  void eachActionIsLookedForByItself() {
    assertEquals(List.of("try: outdoor disconnect", "open: electrical cover"),
        left("isolate: outdoor disconnect\ntry: outdoor disconnect\nopen: electrical cover",
            "Pull the disconnect and lock it. The cover comes next."));
    assertEquals(List.of("tag out: furnace switch"), left("tag out: furnace breaker, furnace switch",
        "Turn the furnace breaker off. Lock and tag the breaker."));
  }

  @Test
  void pronounAfterTwoSentencesIsInDoubt() {
    assertEquals(1,
        left("tag out: outdoor disconnect", "Look at the disconnect. Wait five minutes. Lock and tag it.").size());
  }

  @Test
  void meterIsProvedTwiceAndItsSourceNamed() {
    String lines = "prove dead: L1, ground\nknown source: a live outlet";
    assertEquals(List.of(), left(lines,
        "Prove the meter on a live outlet. Read L1 to ground. Prove the meter again."));
    assertEquals(List.of("known source: a live outlet"), left(lines,
        "Prove the meter. Read L1 to ground. Prove the meter again."));
    assertEquals(List.of("prove dead: L1", "prove dead: ground"), left(lines,
        "Prove the meter on a live outlet. Read L1 to ground with the meter."));
  }
}
