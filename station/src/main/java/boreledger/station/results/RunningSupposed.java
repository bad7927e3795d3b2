package boreledger.station.results;

import boreledger.station.job.Running;
import boreledger.station.table.UsualTemperatures;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Temperatures of the running engine that are supposed, in degrees Celsius; each null where nothing
 * else is supposed than what holds.
 */
public record RunningSupposed(Double ringTempC, Double wallTopTempC, Double wallBottomTempC) {
  /** Nothing supposed. */
  public static final RunningSupposed NOTHING = new RunningSupposed(null, null, null);

  /** What then holds, with the origin of each of the three. */
  UsualTemperatures over(Running job, UsualTemperatures usual) {
    List<String> origins = new ArrayList<>();
    double ringC =
        one("ring", ringTempC, job.ringTempC(), usual.ringTempC(), usual.origin(), origins);
    double topC =
        one(
            "wall at the top",
            wallTopTempC,
            job.wallTopTempC(),
            usual.wallTopTempC(),
            usual.origin(),
            origins);
    double bottomC =
        one(
            "wall at the bottom",
            wallBottomTempC,
            job.wallBottomTempC(),
            usual.wallBottomTempC(),
            usual.origin(),
            origins);
    return new UsualTemperatures(ringC, topC, bottomC, String.join(", ", origins));
  }

  private static double one(
      String part,
      Double supposedC,
      Double jobC,
      double usualC,
      String usualOrigin,
      List<String> origins) {
    double tempC = supposedC != null ? supposedC : jobC != null ? jobC : usualC;
    String origin = supposedC != null ? "supposed" : jobC != null ? "the job" : usualOrigin;
    origins.add(String.format(Locale.ROOT, "%s %.0f °C (%s)", part, tempC, origin));
    return tempC;
  }
}
