package boreledger.station.plan;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;

/**
 * One place to gauge. In the ledger its JSON has {@code at} first, then the components by their
 * names in snake case.
 */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "at")
@JsonSubTypes({
  @JsonSubTypes.Type(name = "setting", value = Position.SettingCheck.class),
  @JsonSubTypes.Type(name = "bore", value = Position.Bore.class),
  @JsonSubTypes.Type(name = "gap", value = Position.Gap.class),
  @JsonSubTypes.Type(name = "ring-depth", value = Position.RingDepth.class),
})
public sealed interface Position {
  /** The place in words, such as {@code cylinder 2, 60 mm below the deck, thrust axis}. */
  String words();

  /**
   * The setting ring.
   *
   * @param check {@code opening}, {@code resuming} or {@code closing}
   */
  record SettingCheck(String check) implements Position {
    /** The check before the first bore. */
    public static final SettingCheck OPENING = new SettingCheck("opening");

    /** The check before going on after a long pause. */
    public static final SettingCheck RESUMING = new SettingCheck("resuming");

    /** The check after the last bore. */
    public static final SettingCheck CLOSING = new SettingCheck("closing");

    @Override
    public String words() {
      return "setting ring, " + check + " check";
    }
  }

  /** A bore's diameter at a depth below the deck along an axis. */
  record Bore(int cylinder, double depthMm, String axis) implements Position {
    @Override
    public String words() {
      return "cylinder " + cylinder + ", " + below(depthMm) + ", " + axis + " axis";
    }
  }

  /** A ring's end gap at a depth below the deck. */
  record Gap(int cylinder, String ring, double depthMm) implements Position {
    @Override
    public String words() {
      return "cylinder " + cylinder + ", " + ring + " ring gap, " + below(depthMm);
    }
  }

  /** How deep a ring lies below the deck at a clock position, 0 degrees toward the thrust side. */
  record RingDepth(int cylinder, String ring, double depthMm, double clockDeg) implements Position {
    @Override
    public String words() {
      return "cylinder "
          + cylinder
          + ", "
          + ring
          + " ring near "
          + below(depthMm)
          + ", clock "
          + plain(clockDeg)
          + "°";
    }
  }

  private static String below(double depthMm) {
    return plain(depthMm) + " mm below the deck";
  }

  private static String plain(double number) {
    return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
  }
}
