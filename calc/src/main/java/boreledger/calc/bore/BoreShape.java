package boreledger.calc.bore;

import java.util.Optional;

/** A bore's shape over depth, as far as it stands out of its uncertainty. */
public enum BoreShape {
  /** No difference between depths stands out. */
  STRAIGHT("straight"),
  /** Wider at the shallowest gauged depth than at the deepest. */
  WIDE_AT_TOP("wide-at-top"),
  /** Wider at the deepest gauged depth than at the shallowest. */
  WIDE_AT_BOTTOM("wide-at-bottom"),
  /** Wider in the middle than at both ends. */
  BARREL("barrel"),
  /** Narrower in the middle than at both ends. */
  WAIST("waist");

  private final String word;

  BoreShape(String word) {
    this.word = word;
  }

  /** The word in files and answers. */
  public String word() {
    return word;
  }

  /**
   * The shape of the mean diameters, after an intended choke is taken off. A difference stands out
   * when it is larger than its expanded uncertainty. Where the middle lies outside both ends and
   * the ends differ too, the larger of the two effects gives the name.
   *
   * @return empty with a single gauged depth
   */
  public static Optional<BoreShape> of(BoreProfile profile, IntendedProfile intended) {
    return profile.sections().size() < 2
        ? Optional.empty()
        : Optional.of(new ShapeSearch(profile.sections(), intended).shape());
  }
}
