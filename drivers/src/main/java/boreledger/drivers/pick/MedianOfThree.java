package boreledger.drivers.pick;

import boreledger.drivers.decoder.Sample;
import java.util.ArrayList;
import java.util.List;

/**
 * Gives each sample its level, one sample late. The first and the last sample of a run take the
 * level of their only neighbour; a run of one or two samples has its own values for levels.
 */
final class MedianOfThree {
  private final List<Sample> waiting = new ArrayList<>();
  private Leveled latest;

  /** Takes a sample; gives those whose levels are known now, oldest first. */
  List<Leveled> accept(Sample sample) {
    waiting.add(sample);
    int known = latest == null ? 3 : 2;
    if (waiting.size() < known) {
      return List.of();
    }
    double levelMm = middle();
    List<Leveled> ready = new ArrayList<>();
    while (waiting.size() > 1) {
      latest = new Leveled(waiting.remove(0), levelMm);
      ready.add(latest);
    }
    return ready;
  }

  /** Ends the run; gives the samples that were still waiting. */
  List<Leveled> flush() {
    List<Leveled> rest = new ArrayList<>();
    for (Sample sample : waiting) {
      rest.add(new Leveled(sample, latest == null ? sample.valueMm() : latest.levelMm()));
    }
    waiting.clear();
    latest = null;
    return rest;
  }

  private double middle() {
    double firstMm = waiting.size() == 3 ? waiting.get(0).valueMm() : latest.sample().valueMm();
    double secondMm = waiting.get(waiting.size() - 2).valueMm();
    double thirdMm = waiting.get(waiting.size() - 1).valueMm();
    double lowMm = Math.min(firstMm, secondMm);
    double highMm = Math.max(firstMm, secondMm);
    return Math.max(lowMm, Math.min(highMm, thirdMm));
  }

  /** The levels of a complete run. */
  static List<Leveled> of(List<Sample> run) {
    MedianOfThree filter = new MedianOfThree();
    List<Leveled> levels = new ArrayList<>();
    for (Sample sample : run) {
      levels.addAll(filter.accept(sample));
    }
    levels.addAll(filter.flush());
    return levels;
  }
}
