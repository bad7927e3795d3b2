package boreledger.station.job;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.Table;
import boreledger.drivers.file.Value;
import boreledger.station.table.GapRuleTable;
import boreledger.station.table.Materials;
import boreledger.station.table.Tables;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Reads {@code [[ring]]} and {@code [[ring_mark]]}. */
final class RingSection {
  private final Materials materials;
  private final GapRuleTable gapRules;

  RingSection(Tables tables) {
    this.materials = tables.materials();
    this.gapRules = tables.gapRules();
  }

  List<Ring> rings(List<Table> tables, Engine engine) throws FileProblem {
    double deepestMm = 0;
    for (Table table : tables) {
      deepestMm = Math.max(deepestMm, travel(table.required("travel_mm")).get(1));
    }
    List<Ring> rings = new ArrayList<>();
    Set<String> names = new HashSet<>();
    for (Table table : tables) {
      RingKind kind = RingKind.of(table.required("name").string(), rings.size());
      Ring ring = ring(table, kind, engine, deepestMm);
      if (!names.add(ring.name())) {
        throw table.required("name").expected("each ring's name once");
      }
      rings.add(ring);
    }
    return rings;
  }

  static List<RingMark> marks(List<Table> tables, List<Ring> rings, Engine engine)
      throws FileProblem {
    List<RingMark> marks = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (Table table : tables) {
      Value mark = table.required("mark");
      if (!seen.add(mark.string())) {
        throw mark.expected("each mark once");
      }
      Value ring = table.required("ring");
      String name = ring.string();
      if (rings.stream().noneMatch(known -> known.name().equals(name))) {
        throw ring.expected("the name of a [[ring]]");
      }
      int cylinder = table.required("cylinder").integer(1, engine.cylinders());
      marks.add(new RingMark(mark.string(), name, cylinder));
    }
    return marks;
  }

  private Ring ring(Table table, RingKind kind, Engine engine, double deepestMm)
      throws FileProblem {
    List<Double> travelMm = travel(table.required("travel_mm"));
    double gapMinMm = gap(table.required("gap_min_mm"), engine);
    Value gapMax = table.required("gap_max_mm");
    if (gap(gapMax, engine) <= gapMinMm) {
      throw gapMax.expected("more than the " + gapMinMm + " mm of gap_min_mm");
    }
    return new Ring(
        table.required("name").string(),
        kind,
        materials.in(table, "material"),
        travelMm.get(0),
        travelMm.get(1),
        gapMinMm,
        gapMax.number(),
        rule(table, kind),
        table.has("target_mm") ? Double.valueOf(gap(table.required("target_mm"), engine)) : null,
        PlanSection.depths(table.required("depths_mm"), deepestMm),
        radialWall(table, engine));
  }

  private String rule(Table table, RingKind kind) throws FileProblem {
    boolean hasTarget = table.has("target_mm");
    if (table.has("rule") == hasTarget) {
      String found = hasTarget ? "both rule and target_mm" : "neither rule nor target_mm";
      throw table.problem("[[ring]] has " + found + ", expected exactly one of them");
    }
    if (hasTarget) {
      return null;
    }
    Value rule = table.required("rule");
    if (gapRules.rules().find(rule.string(), kind.word()).isEmpty()) {
      throw rule.expected(
          "a use in the gap rule table, one of " + String.join(", ", gapRules.uses().keySet()));
    }
    return rule.string();
  }

  private static List<Double> travel(Value value) throws FileProblem {
    List<Double> mm = value.numbers();
    if (mm.size() != 2 || mm.get(0) < 0 || mm.get(1) <= mm.get(0)) {
      throw value.problem(
          "travel_mm is " + mm + ", expected two depths: at top, then at bottom dead centre");
    }
    return mm;
  }

  private static double gap(Value value, Engine engine) throws FileProblem {
    double mm = value.number();
    if (mm < 0 || mm > engine.nominalBoreMm() / 10) {
      throw value.expected("a gap from 0 mm to a tenth of the bore");
    }
    return mm;
  }

  private static Double radialWall(Table table, Engine engine) throws FileProblem {
    if (!table.has("radial_wall_mm")) {
      return null;
    }
    Value value = table.required("radial_wall_mm");
    double mm = value.positive();
    if (mm >= engine.nominalBoreMm() / 4) {
      throw value.expected("a radial wall below a quarter of the bore");
    }
    return mm;
  }
}
