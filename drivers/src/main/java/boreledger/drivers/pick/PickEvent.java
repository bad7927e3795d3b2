package boreledger.drivers.pick;

import boreledger.drivers.decoder.Sample;
import java.util.List;

/** What a pick rule made of samples: a picked value, or a reason why there is none. */
public sealed interface PickEvent {
  /** The time it stands for, in seconds on the line's clock. */
  double tS();

  /** The samples it came from, oldest first, never empty. */
  List<Sample> samples();

  /**
   * One value for one position.
   *
   * @param tS for {@code press} the frame's time, for {@code settle} the middle of the still
   *     samples, for {@code rock} the weighted mean time of the vertices
   * @param valueMm the gauge's own value in millimetres
   * @param standardUncertaintyMm how well the samples fix it, in millimetres; null when one sample
   *     cannot say
   * @param cautions plain sentences, such as a suspected stuck key; often empty
   */
  record Picked(
      double tS,
      double valueMm,
      Double standardUncertaintyMm,
      List<Sample> samples,
      List<String> cautions)
      implements PickEvent {
    /** Takes copies of the lists. */
    public Picked {
      samples = List.copyOf(samples);
      cautions = List.copyOf(cautions);
    }
  }

  /**
   * Samples that ended without a value, such as a rock that was too short.
   *
   * @param why one plain clause that says what was missing
   */
  record NotPicked(double tS, List<Sample> samples, String why) implements PickEvent {
    /** Takes a copy of the list. */
    public NotPicked {
      samples = List.copyOf(samples);
    }
  }
}
