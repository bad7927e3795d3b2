package boreledger.station.report;

import boreledger.station.app.BenchFolder;
import boreledger.station.app.Replay;
import boreledger.station.app.ReportAnswer;
import boreledger.station.app.ReportFile;
import boreledger.station.app.ReportRequest;
import boreledger.station.app.StoredJobs;
import boreledger.station.job.DisplayUnit;
import boreledger.station.ledger.LedgerView;
import boreledger.station.results.JobResults;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** A ledger of an invented engine of any size, gauged from lines that a rule makes. */
final class InventedLedger {
  static final Clock NOON = Clock.fixed(Instant.parse("2031-05-07T12:00:00Z"), ZoneOffset.UTC);

  private final BenchFolder bench;
  private final Shape shape;
  private final List<Path> captures = new ArrayList<>();

  /**
   * What the engine is like.
   *
   * @param limits the text of the table of limits, perhaps empty
   */
  record Shape(
      String name,
      int cylinders,
      String arrangement,
      List<Double> depthsMm,
      List<String> axes,
      int rings,
      String unit,
      String limits) {
    static final String LIMITS =
        """
        bore_min_mm = 96.000
        bore_max_mm = 96.030
        wear_limit_mm = 96.150
        taper_max_mm = 0.050
        out_of_round_max_mm = 0.030
        oversizes_mm = [0.25, 0.50]
        honing_allowance_mm = 0.05
        """;

    /** Three cylinders in a row, three depths, two axes, two rings. */
    static Shape usual() {
      return new Shape(
          "Mill engine",
          3,
          "inline",
          List.of(12.0, 60.0, 108.0),
          List.of("thrust", "pin"),
          2,
          "mm",
          LIMITS);
    }

    /** As large as engines on a bench get. */
    static Shape large() {
      List<Double> depths = IntStream.rangeClosed(1, 10).mapToObj(i -> 11.0 * i).toList();
      return new Shape(
          "Ferry engine of the upper lake, starboard, with a name that is much too long to stand on"
              + " one line of any sheet",
          12,
          "vee",
          depths,
          List.of("thrust", "pin"),
          6,
          "mm",
          LIMITS);
    }

    Shape with(String newUnit) {
      return new Shape(name, cylinders, arrangement, depthsMm, axes, rings, newUnit, limits);
    }
  }

  InventedLedger(Path folder, Shape shape) {
    this.bench = new BenchFolder(folder);
    this.shape = shape;
    bench.write("engine.job.toml", job());
    bench.write("deviation.gauge.toml", gauge("deviation", 0.001, 0.002));
    bench.write("gap.gauge.toml", gauge("size", 0.005, 0.005));
  }

  /** Every position of the bores, the setting ring's checks included. */
  InventedLedger bores() {
    return bores(shape.cylinders() * shape.depthsMm().size() * shape.axes().size() + 2);
  }

  /** The first readings of the plan and no more. */
  InventedLedger bores(int readings) {
    List<String> lines = new ArrayList<>(List.of("+0.000"));
    for (int cylinder = 1; cylinder <= shape.cylinders(); cylinder++) {
      for (double depthMm : shape.depthsMm()) {
        for (int axis = 0; axis < shape.axes().size(); axis++) {
          lines.add(String.format(Locale.ROOT, "%+.3f", deviationMm(cylinder, depthMm, axis)));
        }
      }
    }
    lines.add("+0.001");
    captures.add(
        bench.capture(
            "bores.capture.jsonl",
            BenchFolder.boreHeader("deviation.gauge.toml"),
            lines.subList(0, readings)));
    return this;
  }

  /** The gaps of the first rings. */
  InventedLedger gaps(int rings) {
    for (int ring = 0; ring < rings; ring++) {
      List<String> lines = new ArrayList<>();
      for (int cylinder = 1; cylinder <= shape.cylinders(); cylinder++) {
        for (double depthMm : shape.depthsMm()) {
          double boreMm = deviationMm(cylinder, depthMm, 0) + deviationMm(cylinder, depthMm, 1);
          double gapMm = 0.30 + 0.06 * ring + 0.02 * (cylinder % 4) + Math.PI * boreMm / 2;
          lines.add(String.format(Locale.ROOT, "%.3f", gapMm));
        }
      }
      captures.add(
          bench.capture(
              "gap-" + ring + ".capture.jsonl",
              BenchFolder.gapHeader("gap.gauge.toml", ringName(ring)),
              lines));
    }
    return this;
  }

  /** Gauges it all. */
  InventedLedger gauged() throws Exception {
    Replay.prepare(bench.path().resolve("engine.job.toml"), captures, null)
        .into(bench.ledger(), event -> {});
    return this;
  }

  /** Writes its sheet at {@link #NOON}. */
  ReportAnswer sheet(Path out, Paper paper) throws Exception {
    return sheet(out, paper, NOON);
  }

  ReportAnswer sheet(Path out, Paper paper, Clock clock) throws Exception {
    DisplayUnit unit = shape.unit().equals("in") ? DisplayUnit.IN : DisplayUnit.MM;
    return ReportFile.write(
        new ReportRequest(bench.ledger(), null, out, true, paper, unit, "A. Turner"), clock);
  }

  JobResults results() throws Exception {
    try (LedgerView view = LedgerView.open(bench.ledger())) {
      return new StoredJobs(view).results((String) null);
    }
  }

  /** Worn at the top across the crankshaft, each cylinder in its own way. */
  private static double deviationMm(int cylinder, double depthMm, int axis) {
    double wear = 0.006 * (cylinder % 5) * Math.exp(-depthMm / 40);
    return 0.012 + wear * (axis == 0 ? 1.6 : axis == 1 ? 0.4 : 1) + 0.001 * ((cylinder + axis) % 3);
  }

  private static String ringName(int ring) {
    return switch (ring) {
      case 0 -> "top";
      case 1 -> "second";
      default -> "second-" + ring;
    };
  }

  private String job() {
    String axes =
        shape.axes().stream().map(axis -> '"' + axis + '"').collect(Collectors.joining(", "));
    StringBuilder text =
        new StringBuilder(
            """
            format = "boreledger-job/1"
            name = "%s"
            display_unit = "%s"
            [engine]
            cylinders = %d
            arrangement = "%s"
            nominal_bore_mm = 96.0
            stroke_mm = 104.0
            block_material = "grey-iron"
            [limits]
            %s
            [plan]
            depths_mm = %s
            axes = [%s]
            [setting]
            size_mm = 96.002
            expanded_uncertainty_mm = 0.001
            cte_per_k = 11.5e-6
            """
                .formatted(
                    shape.name(),
                    shape.unit(),
                    shape.cylinders(),
                    shape.arrangement(),
                    shape.limits(),
                    shape.depthsMm(),
                    axes));
    for (int ring = 0; ring < shape.rings(); ring++) {
      text.append(
          """
          [[ring]]
          name = "%s"
          material = "ductile-iron"
          travel_mm = [9.0, 113.0]
          gap_min_mm = 0.40
          gap_max_mm = 0.75
          %s
          depths_mm = %s
          """
              .formatted(
                  ringName(ring),
                  ring == 0 ? "rule = \"boosted\"" : "target_mm = 0.55",
                  shape.depthsMm()));
    }
    return text.toString();
  }

  private static String gauge(String reads, double resolutionMm, double maxErrorMm) {
    return """
        format = "boreledger-gauge/1"
        name = "Pressed %s"
        reads = "%s"
        unit = "mm"
        resolution_mm = %s
        max_error_mm = %s
        [frame]
        kind = "line"
        ends_with = "\\n"
        max_bytes = 64
        [decode]
        pattern = '^(?<value>[+-]?\\d+\\.\\d+)$'
        [pick]
        rule = "press"
        """
        .formatted(reads, reads, resolutionMm, maxErrorMm);
  }
}
