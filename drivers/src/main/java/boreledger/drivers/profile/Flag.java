package boreledger.drivers.profile;

/** What a gauge may say of a value besides its size, the gravest first. */
public enum Flag {
  /** What the gauge sends is no measured value. */
  OUT_OF_RANGE("out_of_range", "the gauge says that its value is out of range"),
  /** The display is held: the value may be of an earlier moment. */
  HOLD("hold", "the gauge is on hold: its value may be of an earlier place"),
  /** The battery wants changing. */
  LOW_BATTERY("low_battery", "the gauge says that its battery is low");

  private final String key;
  private final String meaning;

  Flag(String key, String meaning) {
    this.key = key;
    this.meaning = meaning;
  }

  /** Its name in a profile, such as {@code low_battery}. */
  public String key() {
    return key;
  }

  /** The name of its group in a pattern: group names in Java have no underscores. */
  public String groupName() {
    return key.replace('_', '0');
  }

  /** What it means, as one plain clause. */
  public String meaning() {
    return meaning;
  }
}
