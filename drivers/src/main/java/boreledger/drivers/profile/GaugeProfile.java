package boreledger.drivers.profile;

import java.util.List;
import java.util.Set;

/**
 * A gauge as its profile file describes it: how its line is set, how its bytes are cut and decoded,
 * and how its samples become a reading.
 *
 * @param source the file's name and exact text, kept in the ledger
 * @param name what a person calls it
 * @param reads whether values are deviations from the setting or sizes
 * @param unit the unit of values that carry none of their own
 * @param resolutionMm the step of its last digit, in millimetres; positive
 * @param maxErrorMm its maximum permissible error of one displacement, in millimetres; positive
 * @param maxErrorIncludes what {@code maxErrorMm} already includes; empty when the profile does not
 *     say
 * @param repeatabilityMm the standard deviation of repeated readings, in millimetres; null when the
 *     profile does not say
 * @param line settings of a serial line
 * @param frame how bytes are cut
 * @param decode how a frame becomes a value
 * @param flags bits of a frame that say something of its value
 * @param checks what a frame must agree with, in order; often empty
 * @param ask how the gauge is asked for a value; null when it sends by itself
 * @param pick how samples become a reading
 */
public record GaugeProfile(
    ProfileSource source,
    String name,
    Reads reads,
    LengthUnit unit,
    double resolutionMm,
    double maxErrorMm,
    Set<MaxErrorPart> maxErrorIncludes,
    Double repeatabilityMm,
    LineSettings line,
    FrameSpec frame,
    DecodeSpec decode,
    FlagSpec flags,
    List<CheckSpec> checks,
    AskSpec ask,
    PickSpec pick) {
  /** Takes copies of the collections. */
  public GaugeProfile {
    maxErrorIncludes = Set.copyOf(maxErrorIncludes);
    checks = List.copyOf(checks);
  }

  /** The same gauge, its samples taken as those of a gauge that is rocked. */
  public GaugeProfile rocked() {
    return pick instanceof PickSpec.Rock ? this : with(PickSpec.Rock.DEFAULT);
  }

  private GaugeProfile with(PickSpec otherPick) {
    return new GaugeProfile(
        source,
        name,
        reads,
        unit,
        resolutionMm,
        maxErrorMm,
        maxErrorIncludes,
        repeatabilityMm,
        line,
        frame,
        decode,
        flags,
        checks,
        ask,
        otherPick);
  }
}
