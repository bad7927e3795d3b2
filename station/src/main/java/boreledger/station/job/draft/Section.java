package boreledger.station.job.draft;

import java.util.Arrays;
import java.util.List;

/** The tables of a job file, in the order in which a draft is written. */
public enum Section {
  /** What stands above every table. */
  JOB("", false),
  /** {@code [engine]}. */
  ENGINE("engine", false),
  /** {@code [limits]}. */
  LIMITS("limits", false),
  /** {@code [plan]}. */
  PLAN("plan", false),
  /** {@code [setting]}. */
  SETTING("setting", false),
  /** {@code [[ring]]}. */
  RING("ring", true),
  /** {@code [[piston]]}. */
  PISTON("piston", true),
  /** {@code [[ring_mark]]}. */
  RING_MARK("ring_mark", true),
  /** {@code [running]}. */
  RUNNING("running", false),
  /** {@code [uncertainty]}. */
  UNCERTAINTY("uncertainty", false);

  private final String key;
  private final boolean repeated;

  Section(String key, boolean repeated) {
    this.key = key;
    this.repeated = repeated;
  }

  /** Its key in the file; empty for what stands above every table. */
  public String key() {
    return key;
  }

  /** Whether there may be any number of them. */
  public boolean repeated() {
    return repeated;
  }

  /** Its fields, in their order. */
  public List<Field> fields() {
    return Arrays.stream(Field.values()).filter(field -> field.section() == this).toList();
  }

  /** Its field that tells one of several from the others. */
  public Field first() {
    return fields().get(0);
  }

  /** The line that opens it in a file. */
  String header() {
    return repeated ? "[[" + key + "]]" : "[" + key + "]";
  }

  /** Whether each of its keys may be left out without another one being refused for it. */
  boolean standsAlone() {
    return this == LIMITS || this == RUNNING || this == UNCERTAINTY;
  }
}
