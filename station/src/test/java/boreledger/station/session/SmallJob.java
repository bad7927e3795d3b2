package boreledger.station.session;

import boreledger.drivers.file.FileProblem;
import boreledger.station.job.Job;
import boreledger.station.job.JobFiles;
import boreledger.station.table.Tables;
import java.util.List;

/**
 * A job of a small invented engine: one cylinder, two depths, two axes, one ring. Every coefficient
 * is written out, so that expected values can be worked out from this text alone.
 *
 * @param text the job file
 */
public record SmallJob(String text) {
  private static final String STANDARD =
      """
      format = "boreledger-job/1"
      name = "Small engine"
      display_unit = "mm"
      [engine]
      cylinders = 1
      arrangement = "inline"
      nominal_bore_mm = 96.0
      stroke_mm = 104.0
      cte_per_k = 11.0e-6
      [limits]
      bore_min_mm = 96.000
      bore_max_mm = 96.050
      wear_limit_mm = 96.150
      taper_max_mm = 0.050
      out_of_round_max_mm = 0.030
      oversizes_mm = [0.50]
      [plan]
      depths_mm = [12.0, 60.0]
      axes = ["thrust", "pin"]
      [setting]
      size_mm = 96.002
      expanded_uncertainty_mm = 0.001
      cte_per_k = 11.5e-6
      [[ring]]
      name = "top"
      cte_per_k = 12.0e-6
      travel_mm = [9.0, 113.0]
      gap_min_mm = 0.30
      gap_max_mm = 0.60
      target_mm = 0.52
      depths_mm = [12.0, 60.0]
      """;

  /** The job as it stands above. */
  public static SmallJob standard() {
    return new SmallJob(STANDARD);
  }

  /** One cylinder gauged at one depth: four positions with the setting ring. */
  public static SmallJob atOneDepth() {
    return standard().with("depths_mm = [12.0, 60.0]", "depths_mm = [12.0]");
  }

  /** The same job with a piece of its text exchanged wherever it stands. */
  public SmallJob with(String piece, String instead) {
    if (!text.contains(piece)) {
      throw new AssertionError("the job does not say " + piece);
    }
    return new SmallJob(text.replace(piece, instead));
  }

  /** The job as the program reads it. */
  public Job job() {
    try {
      return new JobFiles(tables()).parse("small.job.toml", text);
    } catch (FileProblem e) {
      throw new AssertionError(e);
    }
  }

  /** The program's own tables. */
  public static Tables tables() {
    try {
      return Tables.of(List.of());
    } catch (FileProblem e) {
      throw new AssertionError(e);
    }
  }
}
