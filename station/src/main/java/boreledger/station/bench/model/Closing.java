package boreledger.station.bench.model;

import boreledger.drivers.capture.Measure;
import boreledger.station.bench.words.BenchText;
import boreledger.station.bench.words.Told;
import boreledger.station.gauging.Ending;
import boreledger.station.results.JobResults;
import boreledger.station.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * What the bench says when a run is over.
 *
 * @param ending how it ended
 * @param verdicts one per cylinder; empty until results are there
 * @param cautions plain sentences; often empty
 */
public record Closing(
    Ending ending, String title, String detail, List<Verdict> verdicts, List<String> cautions) {
  /** Takes copies of the lists. */
  public Closing {
    verdicts = List.copyOf(verdicts);
    cautions = List.copyOf(cautions);
  }

  /**
   * The end of a session.
   *
   * @param why what stopped the run, in a plain sentence; empty when there is nothing to tell
   */
  static Closing of(Sitting sitting, Ending ending, String why) {
    String detail = detail(sitting, ending);
    return new Closing(
        ending,
        title(ending),
        why.isEmpty() ? detail : BenchText.OVER_BECAUSE.with(why, detail),
        verdicts(sitting),
        allCautions(sitting));
  }

  private static List<String> allCautions(Sitting sitting) {
    String fault = sitting.resultsFault();
    Stream<String> first = fault.isEmpty() ? Stream.empty() : Stream.of(fault);
    return Stream.concat(first, cautions(sitting).stream()).toList();
  }

  private static String title(Ending ending) {
    return switch (ending) {
      case PLAN_DONE -> BenchText.OVER_PLAN_DONE.with();
      case LINE_ENDED -> BenchText.OVER_LINE_ENDED.with();
      case LINE_BROKE -> BenchText.OVER_LINE_BROKE.with();
      case STOPPED -> BenchText.OVER_STOPPED.with();
      case LEDGER_FAILED -> BenchText.OVER_LEDGER_FAILED.with();
    };
  }

  private static String detail(Sitting sitting, Ending ending) {
    if (sitting.next().isEmpty()) {
      return BenchText.OVER_PLAN_DONE_DETAIL.with();
    }
    String place = Place.brief(sitting.lengths(), sitting.next().get());
    return switch (ending) {
      case PLAN_DONE, LINE_ENDED -> BenchText.OVER_LINE_ENDED_DETAIL.with(place);
      case LINE_BROKE -> BenchText.OVER_LINE_BROKE_DETAIL.with(place);
      case STOPPED -> BenchText.OVER_STOPPED_DETAIL.with(place);
      case LEDGER_FAILED -> BenchText.OVER_LEDGER_FAILED_DETAIL.with(place);
    };
  }

  private static List<Verdict> verdicts(Sitting sitting) {
    JobResults results = sitting.results();
    if (results == null) {
      return List.of();
    }
    Function<JobResults.CylinderResults, Verdict> line =
        sitting.measure() == Measure.BORE
            ? new BoreVerdicts(sitting.lengths().format())::verdict
            : new GapVerdicts(sitting.lengths().format(), sitting.start().ring().name())::verdict;
    return results.cylinders().stream().map(line).toList();
  }

  private static List<String> cautions(Sitting sitting) {
    JobResults results = sitting.results();
    if (results == null) {
      return List.of();
    }
    Wording wording = Told.with(sitting.lengths().format());
    List<String> cautions = new ArrayList<>(wording.each(results.cautions()));
    for (JobResults.CylinderResults each : results.cylinders()) {
      String cylinder = BenchText.VERDICT_CYLINDER.with(Integer.toString(each.cylinder()));
      each.rings().stream()
          .flatMap(ring -> ring.cautions().stream())
          .forEach(caution -> cautions.add(cylinder + ": " + wording.of(caution)));
    }
    return cautions;
  }
}
