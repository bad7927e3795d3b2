package boreledger.station.table;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.StrictToml;
import boreledger.drivers.file.Table;
import boreledger.drivers.file.Value;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The materials table: expansion coefficients by name, each with its origin. */
public final class Materials {
  static final String FILE = "materials.toml";

  private final Map<String, Material> byName;

  private Materials(Map<String, Material> byName) {
    this.byName = byName;
  }

  /**
   * Reads a materials file.
   *
   * @param file what messages call it
   * @throws FileProblem at the first thing that is not understood
   */
  public static Materials parse(String file, String text) throws FileProblem {
    Table top = StrictToml.parse(file, text);
    top.required("format").oneOf(Map.of("boreledger-materials/1", true));
    Map<String, Material> byName = new LinkedHashMap<>();
    for (Table row : top.tables("material")) {
      String name = row.required("name").string();
      Material material =
          new Material(name, row.required("cte_per_k").positive(), row.required("origin").string());
      if (byName.put(name, material) != null) {
        throw row.problem("material " + name + " is listed twice, expected once");
      }
    }
    top.done();
    return new Materials(byName);
  }

  /** Every material, in the file's order. */
  public List<Material> all() {
    return List.copyOf(byName.values());
  }

  /**
   * The material of a file's table that has a material's name, or {@code cte_per_k}, or both.
   *
   * @param nameKey the key of the name, such as {@code block_material}
   */
  public Material in(Table table, String nameKey) throws FileProblem {
    Material named = table.has(nameKey) ? named(table.required(nameKey)) : null;
    if (table.has("cte_per_k")) {
      double ctePerK = coefficient(table.required("cte_per_k"));
      return new Material(named == null ? null : named.name(), ctePerK, "the job");
    }
    if (named == null) {
      throw table.problem("missing " + nameKey + ", or cte_per_k in its place");
    }
    return named;
  }

  /** The material that a value names. */
  public Material named(Value name) throws FileProblem {
    Material material = byName.get(name.string());
    if (material == null) {
      throw name.expected("one of " + String.join(", ", byName.keySet()) + ", or a cte_per_k");
    }
    return material;
  }

  /** A coefficient that a solid can have; the bound catches a forgotten e-6. */
  public static double coefficient(Value value) throws FileProblem {
    double ctePerK = value.positive();
    if (ctePerK > 1e-3) {
      throw value.expected("a coefficient per kelvin, such as 11.4e-6");
    }
    return ctePerK;
  }
}
