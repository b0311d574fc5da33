package rungbook.action;

import java.util.Arrays;
import java.util.List;

/**
 * The instructions with which the trade says each action: a verb, and the word that goes with it, {@code switch off}.
 * Common practice, no source.
 */
public final class DeedWords {

  private static final String LOCK = "lock, put lock, padlock";

  private DeedWords() {}

  /**
   * What has to be said for an action, one form of each group. Where an action has two parts, such as to shut off and
   * to lock, one of them alone does not say it.
   */
  public static List<List<String>> of(ActionKind kind) {
    return switch (kind) {
      case SET -> groups("set, turn, switch, put, move");
      case OPEN -> groups("open, take off, lift off, pull off, remove, unscrew, swing open, slide off");
      case CLOSE -> groups("close, put on, put back, screw on, hang on, swing shut, slide on");
      case BYPASS -> groups("tape in, hold in, tape down, hold down, defeat, bypass");
      case ISOLATE -> groups("isolate, switch off, turn off, shut off, pull, pull out", LOCK);
      case TRY -> groups("try, press, turn on, switch on, call for");
      case PROVE_DEAD -> groups("prove dead, read, test, measure");
      case DISCHARGE -> groups("discharge, short, bleed, bridge", "read, prove, test, measure");
      case DISCONNECT -> groups("disconnect, take off, take out, pull, lift, unplug, remove");
      case RECONNECT -> groups("reconnect, connect, put back, put on, press on, plug in, land");
      case REPLACE -> groups("replace, change, swap, install, put in, fit");
      case REPAIR -> groups("repair, mend, fix, clean, clear, tighten, splice, straighten, free, adjust, reset");
      case RESET -> groups("reset, press reset, press, push in");
      case RESTORE -> groups("restore, turn on, switch on, push in, put on, put in, put back, close, reconnect, "
          + "press on, pull tape, take tape, remove tape, remove bypass");
      case TAG_OUT -> groups(LOCK, "tag, put tag, tag out");
      case KNOWN_SOURCE -> groups("prove, check, test");
    };
  }

  private static List<List<String>> groups(String... groups) {
    return Arrays.stream(groups).map(forms -> List.of(forms.split(", "))).toList();
  }
}
