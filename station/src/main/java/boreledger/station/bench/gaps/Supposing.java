package boreledger.station.bench.gaps;

import boreledger.station.bench.findings.Finding;
import boreledger.station.bench.findings.Findings;
import boreledger.station.bench.words.GapsText;
import boreledger.station.bench.words.Told;
import boreledger.station.job.Running;
import boreledger.station.job.draft.Kind;
import boreledger.station.job.draft.Numerals;
import boreledger.station.job.draft.Typed;
import boreledger.station.results.RunningSupposed;
import boreledger.station.results.WhatIf;
import boreledger.station.table.UsualTemperatures;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** What is supposed of the engine's use and its running temperatures, as a person types it. */
final class Supposing {
  /** The use that the job says. */
  static final String AS_THE_JOB_SAYS = "";

  /** A part whose temperature can be supposed. */
  enum Part {
    /** The ring. */
    RING,
    /** The bore's wall at the top of the ring's travel. */
    WALL_TOP,
    /** The bore's wall at its bottom. */
    WALL_BOTTOM
  }

  private final Findings findings;
  private final StringProperty use = new SimpleStringProperty(AS_THE_JOB_SAYS);
  private final Map<Part, StringProperty> typed = new EnumMap<>(Part.class);
  private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");

  Supposing(Findings findings) {
    this.findings = findings;
    for (Part part : Part.values()) {
      typed.put(part, new SimpleStringProperty(""));
    }
    use.subscribe((before, now) -> suppose());
  }

  /** A use of the gap rule table, or {@link #AS_THE_JOB_SAYS}. */
  StringProperty use() {
    return use;
  }

  /** A part's temperature as typed; blank for the one that holds. */
  StringProperty typed(Part part) {
    return typed.get(part);
  }

  /** What is wrong with what was typed, in words; empty when nothing is. */
  ReadOnlyStringProperty problem() {
    return problem.getReadOnlyProperty();
  }

  /** Whether anything is supposed just now. */
  boolean isSupposed() {
    return !findings.whatIf().get().equals(WhatIf.AS_IT_IS);
  }

  /** Computes everything under what is typed and chosen. */
  void suppose() {
    List<Double> temperaturesC = new ArrayList<>();
    for (Part part : Part.values()) {
      Typed read = Numerals.read(Kind.CELSIUS, typed.get(part).get());
      Double tempC =
          read.numbers().isEmpty() ? null : Double.valueOf(read.numbers().get(0).doubleValue());
      if (!read.isUnderstood() || tempC != null && !Running.isPossible(tempC)) {
        problem.set(
            GapsText.TEMP_WRONG.with(
                typed.get(part).get().strip(), plain(Running.COLDEST_C), plain(Running.HOTTEST_C)));
        return;
      }
      temperaturesC.add(tempC);
    }
    problem.set("");
    findings
        .whatIf()
        .set(
            new WhatIf(
                use.get().equals(AS_THE_JOB_SAYS) ? null : use.get(),
                new RunningSupposed(
                    temperaturesC.get(0), temperaturesC.get(1), temperaturesC.get(2))));
  }

  /** Supposes nothing any more. */
  void asItIs() {
    typed.values().forEach(each -> each.set(""));
    use.set(AS_THE_JOB_SAYS);
    suppose();
  }

  /** The temperature that holds while nothing is supposed. */
  static String holding(Finding finding, Part part) {
    Running job = finding.job().running();
    UsualTemperatures usual = finding.sessions().tables().temperatures();
    return plain(
        switch (part) {
          case RING -> or(job.ringTempC(), usual.ringTempC());
          case WALL_TOP -> or(job.wallTopTempC(), usual.wallTopTempC());
          case WALL_BOTTOM -> or(job.wallBottomTempC(), usual.wallBottomTempC());
        });
  }

  /** The temperatures that hold while nothing is supposed, each with its origin. */
  static String origins(Finding finding) {
    Running job = finding.job().running();
    String usual = finding.sessions().tables().temperatures().origin();
    return GapsText.TEMPS_HOLDING.with(
        told(finding, Part.RING, job.ringTempC(), usual),
        told(finding, Part.WALL_TOP, job.wallTopTempC(), usual),
        told(finding, Part.WALL_BOTTOM, job.wallBottomTempC(), usual));
  }

  private static String told(Finding finding, Part part, Double jobC, String usual) {
    return GapsText.TEMP_FROM.with(
        holding(finding, part), jobC == null ? Told.recorded(usual) : GapsText.TEMP_THE_JOB.with());
  }

  private static double or(Double given, double usual) {
    return given == null ? usual : given;
  }

  private static String plain(double tempC) {
    return BigDecimal.valueOf(tempC).stripTrailingZeros().toPlainString();
  }
}
