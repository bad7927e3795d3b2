package boreledger.station.bench;

import boreledger.drivers.file.FileProblem;
import boreledger.station.job.Job;
import boreledger.station.job.JobFiles;
import boreledger.station.table.Tables;
import java.util.List;

/** Invented jobs for the bench's tests. */
public final class Jobs {
  private Jobs() {}

  /** Three cylinders in line, three depths, two axes, two rings. */
  public static Job pumphouse() {
    return parse(
        text("Pumphouse three", "mm", 3, "inline", "12.0, 60.0, 108.0", "\"thrust\", \"pin\""));
  }

  /** The same engine shown in inches. */
  public static Job inches() {
    return parse(
        text("Pumphouse three", "in", 3, "inline", "12.0, 60.0, 108.0", "\"thrust\", \"pin\""));
  }

  /** Eight cylinders in two banks, six depths, three axes. */
  public static Job millHouse() {
    return parse(
        text(
            "Mill house eight",
            "mm",
            8,
            "vee",
            "8.0, 30.0, 52.0, 74.0, 96.0, 112.0",
            "\"thrust\", \"middle\", \"pin\""));
  }

  /** Sixteen cylinders in line. */
  public static Job longMill() {
    return parse(
        text("Long mill sixteen", "mm", 16, "inline", "12.0, 60.0, 108.0", "\"pin\", \"thrust\""));
  }

  /** As many cylinders as a job may have. */
  public static Job endless() {
    return parse(
        text("Pump row sixty-four", "mm", 64, "inline", "12.0, 60.0", "\"thrust\", \"pin\""));
  }

  /** A job with long names. */
  public static Job wordy() {
    return parse(
        text(
            "Pumphouse three, second sitting, after the block came back from the honing shop",
            "mm",
            3,
            "flat",
            "12.25, 60.5, 108.75",
            "\"across the crankshaft\", \"along the crankshaft\""));
  }

  /** A job whose limits were all left out. */
  public static Job withoutLimits() {
    String text = text("No limits", "mm", 2, "flat", "12.0, 60.0", "\"thrust\", \"pin\"");
    return parse(text.replaceAll("(?m)^(bore_m|wear|taper|out_of|oversizes).*\n", ""));
  }

  private static Job parse(String text) {
    try {
      return new JobFiles(tables()).parse("bench.job.toml", text);
    } catch (FileProblem e) {
      throw new IllegalStateException(e);
    }
  }

  /** The tables that come with the program. */
  static Tables tables() {
    try {
      return Tables.of(List.of());
    } catch (FileProblem e) {
      throw new IllegalStateException(e);
    }
  }

  private static String text(
      String name, String unit, int cylinders, String arrangement, String depths, String axes) {
    return """
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
        bore_min_mm = 96.000
        bore_max_mm = 96.030
        wear_limit_mm = 96.150
        taper_max_mm = 0.050
        out_of_round_max_mm = 0.030
        oversizes_mm = [0.50]
        [plan]
        depths_mm = [%s]
        axes = [%s]
        [setting]
        size_mm = 96.002
        expanded_uncertainty_mm = 0.001
        cte_per_k = 11.5e-6
        [[ring]]
        name = "top"
        material = "ductile-iron"
        travel_mm = [9.0, 113.0]
        gap_min_mm = 0.30
        gap_max_mm = 0.60
        target_mm = 0.52
        depths_mm = [12.0, 60.0, 108.0]
        [[ring]]
        name = "second"
        material = "grey-iron"
        travel_mm = [13.5, 117.5]
        gap_min_mm = 0.35
        gap_max_mm = 0.80
        target_mm = 0.60
        depths_mm = [12.0, 60.0, 108.0]
        """
        .formatted(name, unit, cylinders, arrangement, depths, axes);
  }
}
