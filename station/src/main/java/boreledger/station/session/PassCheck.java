package boreledger.station.session;

import boreledger.station.job.Job;
import boreledger.station.ledger.EntryBody.Filed;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/** What a noted pass with the file must say to have been possible at all. */
public final class PassCheck {
  private static final Pattern DECIMAL = Pattern.compile("\\d{1,3}(\\.\\d{1,15})?");
  private static final int MOST_TURNS = 10_000;

  private PassCheck() {}

  /**
   * What is wrong with a pass, in one plain clause; empty when nothing is.
   *
   * @param job the job of the session that it names
   */
  public static Optional<String> fault(Filed pass, Job job) {
    int cylinders = job.engine().cylinders();
    if (pass.cylinder() < 1 || pass.cylinder() > cylinders) {
      return Optional.of("no cylinder " + pass.cylinder() + " in this job, it has " + cylinders);
    } else if (job.ring(pass.ring()).isEmpty()) {
      return Optional.of("no ring named " + pass.ring() + " in this job");
    } else if (pass.turns() < 1 || pass.turns() > MOST_TURNS) {
      return Optional.of(pass.turns() + " turns are no pass, it has 1 to " + MOST_TURNS);
    } else if (pass.who() == null || pass.who().isBlank()) {
      return Optional.of("a pass with the file needs the name of who filed");
    }
    return gap("before", pass.beforeMm()).or(() -> gap("after", pass.afterMm()));
  }

  /** A gap that was noted, in millimetres; empty for a text that says none. */
  public static Optional<Double> gapMm(String text) {
    return text != null && DECIMAL.matcher(text).matches()
        ? Optional.of(new BigDecimal(text).doubleValue())
        : Optional.empty();
  }

  private static Optional<String> gap(String when, String text) {
    Optional<Double> gapMm = gapMm(text);
    if (gapMm.isEmpty()) {
      return Optional.of("the gap " + when + " is \"" + text + "\", no plain decimal number");
    }
    return Plausible.gaps()
        .refusal(gapMm.get())
        .map(why -> "the gap " + when + " cannot be: " + why);
  }
}
