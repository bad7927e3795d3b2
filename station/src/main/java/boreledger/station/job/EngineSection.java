package boreledger.station.job;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.Table;
import boreledger.drivers.file.Value;
import boreledger.station.job.Engine.Arrangement;
import boreledger.station.table.Material;
import boreledger.station.table.Materials;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Reads {@code [engine]} and {@code [[piston]]}. */
final class EngineSection {
  private static final int MOST_CYLINDERS = 64;
  private static final double LARGEST_BORE_MM = 2000;
  private static final double LARGEST_STROKE_MM = 5000;

  private final Materials materials;

  EngineSection(Materials materials) {
    this.materials = materials;
  }

  Engine engine(Table table) throws FileProblem {
    Material block = materials.in(table, "block_material");
    return new Engine(
        table.required("cylinders").integer(1, MOST_CYLINDERS),
        table.required("arrangement").oneOf(arrangements()),
        atMost(table.required("nominal_bore_mm"), LARGEST_BORE_MM),
        atMost(table.required("stroke_mm"), LARGEST_STROKE_MM),
        block,
        bore(table, block),
        word(table, "condition", "bare", "torque-plate"),
        word(table, "main_caps", "torqued", "loose"));
  }

  static List<Piston> pistons(List<Table> tables, Engine engine) throws FileProblem {
    List<Piston> pistons = new ArrayList<>();
    Set<Integer> seen = new HashSet<>();
    for (Table table : tables) {
      Value cylinder = table.required("cylinder");
      int number = cylinder.integer(1, engine.cylinders());
      if (!seen.add(number)) {
        throw cylinder.problem("cylinder " + number + " has two pistons, expected one");
      }
      Value diameter = table.required("diameter_mm");
      if (Math.abs(diameter.positive() - engine.nominalBoreMm()) > engine.nominalBoreMm() / 10) {
        throw diameter.expected("a size near the bore of " + engine.nominalBoreMm() + " mm");
      }
      pistons.add(new Piston(number, diameter.positive()));
    }
    return pistons;
  }

  private Material bore(Table table, Material block) throws FileProblem {
    Material liner =
        table.has("liner_material") ? materials.named(table.required("liner_material")) : block;
    if (table.has("bore_cte_per_k")) {
      double ctePerK = Materials.coefficient(table.required("bore_cte_per_k"));
      return new Material(liner.name(), ctePerK, "the job");
    }
    return liner;
  }

  private static Map<String, Arrangement> arrangements() {
    Map<String, Arrangement> words = new LinkedHashMap<>();
    words.put("inline", Arrangement.INLINE);
    words.put("vee", Arrangement.VEE);
    words.put("flat", Arrangement.FLAT);
    return words;
  }

  private static String word(Table table, String key, String one, String other) throws FileProblem {
    return table.has(key) ? table.required(key).oneOf(Map.of(one, one, other, other)) : null;
  }

  private static double atMost(Value value, double mostMm) throws FileProblem {
    double mm = value.positive();
    if (mm > mostMm) {
      throw value.expected("at most " + mostMm + " mm");
    }
    return mm;
  }
}
