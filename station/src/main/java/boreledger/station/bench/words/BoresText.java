package boreledger.station.bench.words;

/** What the room <i>Bores</i> says. */
public enum BoresText implements Text {
  NOTHING,
  NO_ADVICE,
  HONE,
  OVERSIZE,
  LARGEST_OVERSIZE,
  SLEEVE,
  NO_FINISHED_SIZE,
  FINISHED_SIZE,
  HONING_WILL_DO,
  HONING_WILL_NOT_DO,
  WHY,
  NO_SHAPE,
  SHAPE,
  STRAIGHT,
  WIDE_AT_TOP,
  WIDE_AT_BOTTOM,
  BARREL,
  WAIST,
  TAPER,
  CHECK,
  UNFOLD,
  BUDGET,
  BUDGET_LINE,
  CLEARANCE_MIN,
  CLEARANCE_MAX,
  STATE_OPEN,
  STATE_WITHIN,
  STATE_BEYOND,
  STATE_UNDECIDED,
  BLOCK_SPOKEN,
  PROFILE_SPOKEN,
  SECTIONS_SPOKEN;

  @Override
  public String room() {
    return "bores.";
  }
}
