package boreledger.station.bench.model;

import boreledger.station.bench.words.BenchText;
import boreledger.station.gauging.GaugingEvent.Progress;
import boreledger.station.plan.Position;
import boreledger.station.plan.Position.SettingCheck;
import java.util.ArrayList;
import java.util.List;

/**
 * How far the plan is.
 *
 * @param words such as {@code 7 of 20 readings}
 * @param left about how long the rest will take, such as {@code about 12 min left}; empty when that
 *     is not known, or nothing is left
 * @param parts the setting checks, then every cylinder
 */
public record PlanProgress(String words, String left, List<Part> parts) {
  /**
   * One part of the plan.
   *
   * @param label the cylinder's number, or the setting
   * @param now whether the position to gauge now is in it
   * @param spoken the part in words, for screen readers
   */
  public record Part(String label, int done, int planned, boolean now, String spoken) {
    /** The count as text, such as {@code 3/6}. */
    public String count() {
      return BenchText.PROGRESS_PART.with(Integer.toString(done), Integer.toString(planned));
    }
  }

  /** Takes a copy of the list. */
  public PlanProgress {
    parts = List.copyOf(parts);
  }

  static PlanProgress none() {
    return new PlanProgress("", "", List.of());
  }

  static PlanProgress of(Sitting sitting, Pace pace) {
    Progress progress = sitting.progress();
    List<Part> parts = new ArrayList<>();
    List<Position> checks = sitting.plan().stream().filter(SettingCheck.class::isInstance).toList();
    if (!checks.isEmpty()) {
      boolean now = progress.next() instanceof SettingCheck;
      parts.add(part(sitting, BenchText.PROGRESS_SETTING.with(), checks, now));
    }
    for (int number = 1; number <= sitting.job().engine().cylinders(); number++) {
      boolean now = progress.next() != null && Sitting.isIn(progress.next(), number);
      parts.add(part(sitting, Integer.toString(number), sitting.ofCylinder(number), now));
    }
    String words =
        BenchText.PROGRESS_WORDS.with(
            Integer.toString(progress.done()), Integer.toString(progress.planned()));
    int open = progress.planned() - progress.done();
    String left = open == 0 ? "" : TimeLeft.words(pace.leftS(open));
    return new PlanProgress(words, left, parts);
  }

  private static Part part(Sitting sitting, String label, List<Position> positions, boolean now) {
    int done = (int) positions.stream().filter(sitting::has).count();
    String name =
        positions.get(0) instanceof SettingCheck ? label : BenchText.PROGRESS_CYLINDER.with(label);
    String spoken =
        BenchText.PROGRESS_ACCESSIBLE.with(
            name, Integer.toString(done), Integer.toString(positions.size()));
    return new Part(label, done, positions.size(), now, spoken);
  }
}
