package boreledger.drivers.pick;

import boreledger.drivers.decoder.Sample;
import java.util.List;

/** How samples become a reading: {@code press}, {@code settle} or {@code rock}. */
public interface PickRule {
  /** Every event that this sample completes, in order. */
  List<PickEvent> accept(Sample sample);

  /**
   * Every event that silence up to now completes. Without this call the next sample or the end
   * completes it, the same but later.
   *
   * @param tS the time now, in seconds on the line's clock
   */
  default List<PickEvent> quiet(double tS) {
    return List.of();
  }

  /**
   * Every event that the end of the stream completes.
   *
   * @param tS the time of the end, in seconds on the line's clock
   */
  List<PickEvent> end(double tS);
}
