package boreledger.station.job;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.Table;
import boreledger.drivers.file.Value;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Reads {@code [plan]}, and depths wherever they stand. */
final class PlanSection {
  private static final List<Double> QUARTERS_DEG = List.of(0.0, 90.0, 180.0, 270.0);
  private static final int FEWEST_CLOCK_POSITIONS = 3;

  private PlanSection() {}

  static GaugingOrder plan(Table table, double deepestMm) throws FileProblem {
    Value depths = table.required("depths_mm");
    List<Double> listedMm = depths.numbers();
    List<Double> depthsMm = depths(depths, deepestMm);
    List<Double> chokeMm = null;
    if (table.has("choke_mm")) {
      chokeMm = choke(table.required("choke_mm"), listedMm, depthsMm);
    }
    List<Double> clockDeg =
        table.has("clock_deg") ? clock(table.required("clock_deg")) : QUARTERS_DEG;
    return new GaugingOrder(depthsMm, axes(table.required("axes")), chokeMm, clockDeg);
  }

  /** Depths below the deck, each once, shallowest first. */
  static List<Double> depths(Value value, double deepestMm) throws FileProblem {
    Set<Double> depthsMm = new HashSet<>();
    for (Value item : value.list()) {
      double depthMm = item.number();
      if (depthMm < 0) {
        throw item.expected("a depth of 0 mm or more below the deck");
      }
      if (depthMm > deepestMm) {
        throw item.expected("at most " + deepestMm + " mm, the lower end of every ring's travel");
      }
      if (!depthsMm.add(depthMm)) {
        throw item.expected("each depth once");
      }
    }
    if (depthsMm.isEmpty()) {
      throw value.problem("depths_mm is empty, expected at least one depth");
    }
    return depthsMm.stream().sorted().toList();
  }

  private static List<String> axes(Value value) throws FileProblem {
    List<String> axes = new ArrayList<>();
    for (Value item : value.list()) {
      if (axes.contains(item.string())) {
        throw item.expected("each axis once");
      }
      axes.add(item.string());
    }
    if (axes.isEmpty()) {
      throw value.problem("axes is empty, expected at least one axis, such as \"thrust\"");
    }
    return axes;
  }

  private static List<Double> choke(Value value, List<Double> listedMm, List<Double> sortedMm)
      throws FileProblem {
    List<Double> chokeMm = value.numbers();
    if (chokeMm.size() != listedMm.size()) {
      throw value.problem(
          "choke_mm has " + chokeMm.size() + " values, expected one for each of depths_mm");
    }
    return sortedMm.stream().map(mm -> chokeMm.get(listedMm.indexOf(mm))).toList();
  }

  private static List<Double> clock(Value value) throws FileProblem {
    List<Double> clockDeg = new ArrayList<>();
    for (Value item : value.list()) {
      double deg = item.number();
      if (deg < 0 || deg >= 360 || clockDeg.contains(deg)) {
        throw item.expected("different angles from 0 to below 360 degrees");
      }
      clockDeg.add(deg);
    }
    if (clockDeg.size() < FEWEST_CLOCK_POSITIONS) {
      throw value.problem(
          "clock_deg has " + clockDeg.size() + " angles, expected three or more: they fix a plane");
    }
    return clockDeg;
  }
}
