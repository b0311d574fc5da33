package rungbook.system;

import java.util.List;
import java.util.stream.IntStream;

/**
 * The text of a made-up system of any size: zones that share a transformer, each of eight parts with a fuse, a cable, a
 * relay and a load. Controls are dealt out to the zones in turn, and any of a zone's controls calls for it; zones that
 * get none are on one control together.
 *
 * @param zones how many
 * @param ownControls how many controls belong to one zone alone
 */
public record ZoneStar(int zones, int ownControls) {

  /** The parts that all zones share. */
  private static final int SHARED = 8;

  private static final int PER_ZONE = 8;

  /** As many zones as give about so many parts. */
  public static ZoneStar ofParts(int parts, int ownControls) {
    return new ZoneStar((parts - SHARED) / PER_ZONE, ownControls);
  }

  public int parts() {
    return SHARED + PER_ZONE * zones;
  }

  /** The text of the system. */
  public String system() {
    var locations = new StringBuilder("panel: start\n");
    var points = new StringBuilder("L1: at panel, 120 V\nL2: at panel, 120 V\nN: at panel\nground: at panel\n"
        + "T1: at panel, 120 V\nR1: at panel\nR: at panel\nC: at panel\nA: at panel\n");
    var controls = new StringBuilder("master: off, on, at panel\nmain switch: isolates power, at panel\n");
    var parts = new StringBuilder("""
        supply: supply, 120 V, from 114 to 126 V, 60 Hz, 0.05 ohm, L1 to N
        neutral bond: joint, N to ground
        main switch: switch, L1 to L2
        main breaker: breaker, 15 A, L2 to T1
        transformer: transformer, 120 V primary, 24 V secondary, 100 VA, regulation 10 to 14 %% of full load, \
        T1 to N, R1 to C
        common bond: wire, C to ground, 0.1 ohm
        control breaker: breaker, 5 A, R1 to R
        master contact: contact, R to A, closed when master on
        """.formatted());
    var faults = new StringBuilder("main breaker tripped: open main breaker, likelihood 2\n");
    for (int zone = 1; zone <= zones; zone++) {
      locations.append("zone %d: walk 1 min\n".formatted(zone));
      points.append("F%1$d: at panel\nK%1$d: at panel\nV%1$d: at panel, zone %1$d\nD%1$d: at panel, zone %1$d\n"
          .formatted(zone)).append("M%1$d: at panel, 120 V\n".formatted(zone));
      List<String> own = controlsOf(zone);
      int at = zone;
      own.forEach(control -> controls.append("%s: off, on, at zone %d\n".formatted(control, at)));
      parts.append(zoneParts(zone, own.isEmpty() ? "master on" : String.join(" on or ", own) + " on"));
      faults.append(zoneFaults(zone));
    }
    return "---\ntitle: Zones\n---\n\n" + block("locations", locations) + block("points", points)
        + block("controls", controls) + block("parts", parts) + block("faults", faults);
  }

  private List<String> controlsOf(int zone) {
    return IntStream.rangeClosed(1, ownControls).filter(control -> (control - zone) % zones == 0)
        .mapToObj(control -> "call " + control).toList();
  }

  private static String block(String name, StringBuilder lines) {
    return "```%s\n%s```\n\n".formatted(name, lines);
  }

  private static String zoneParts(int zone, String control) {
    return """
        fuse %1$d: fuse, 3 A, R to F%1$d
        call contact %1$d: contact, F%1$d to K%1$d, closed when %2$s
        joint %1$d: wire, K%1$d to V%1$d at panel
        cable %1$d: cable, 18 AWG, 40 to 60 ft, 0 to 40 C, panel to zone %1$d, conductor V%1$d, conductor D%1$d
        return %1$d: wire, D%1$d at panel to C
        relay %1$d: coil, 24 V, 0.4 VA, V%1$d at zone %1$d to D%1$d at zone %1$d, picks up at 16 to 19 V
        relay contact %1$d: contact, T1 to M%1$d, closed when relay %1$d on
        fan %1$d: motor, 120 V, 0.1 A, 0.8 pf, M%1$d to N
        """.formatted(zone, control);
  }

  private static String zoneFaults(int zone) {
    return """
        fuse %1$d open: open fuse %1$d, likelihood 2
        call contact %1$d stuck closed: hold call contact %1$d closed, likelihood 1
        cable %1$d open: open V%1$d cable %1$d, likelihood 3
        cable %1$d shorted: short V%1$d at zone %1$d to D%1$d at zone %1$d, likelihood 2
        relay %1$d open: open relay %1$d, likelihood 2
        """.formatted(zone);
  }

  /** A tree that calls for one zone and measures on its way. */
  public String tree() {
    return """
        ---
        title: Zone 1 does not answer
        complaint: Zone 1 does not answer
        system: zones
        ---

        ## Call

        ```task
        set: %s on
        at: zone 1
        ```

        - done: [Control voltage](#control-voltage)

        ## Control voltage

        ```check
        measure: AC volts
        leads: R, C
        at: panel
        expect: 20 to 30 V
        ```

        - 20 to 30: [Zone voltage](#zone-voltage)
        - under 20: [No control voltage](#no-control-voltage)
        - over 30: [No control voltage](#no-control-voltage)

        ## Zone voltage

        ```check
        measure: AC volts
        leads: V1, D1
        at: zone 1
        expect: 20 to 30 V
        ```

        - 20 to 30: [Fan voltage](#fan-voltage)
        - under 20: [Cable open](#cable-open)
        - over 30: [Cable open](#cable-open)

        ## Fan voltage

        ```check
        measure: AC volts
        leads: M1, N
        at: panel
        expect: 110 to 130 V
        ```

        - 110 to 130: [All well](#all-well)
        - under 110: [Relay open](#relay-open)
        - over 130: [All well](#all-well)

        ## All well

        ```finding
        healthy: yes
        ```

        ## Cable open

        ```finding
        fault: cable 1 open
        ```

        ## Relay open

        ```finding
        fault: relay 1 open
        ```

        ## No control voltage

        ```finding
        fault: main breaker tripped
        ```
        """.formatted(ownControls > 0 ? "call 1" : "master");
  }
}
