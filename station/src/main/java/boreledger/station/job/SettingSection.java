package boreledger.station.job;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.Table;
import boreledger.drivers.file.Value;
import boreledger.station.job.Setting.Kind;
import boreledger.station.table.Materials;
import java.util.Map;

/** Reads {@code [setting]}. */
final class SettingSection {
  private static final Map<String, Kind> KINDS =
      Map.of("ring", Kind.RING, "micrometer", Kind.MICROMETER);

  private SettingSection() {}

  static Setting setting(Table table, Engine engine) throws FileProblem {
    Kind kind = table.has("kind") ? table.required("kind").oneOf(KINDS) : Kind.RING;
    Value size = table.required("size_mm");
    if (Math.abs(size.positive() - engine.nominalBoreMm()) > engine.nominalBoreMm() / 10) {
      throw size.expected("a size near the bore of " + engine.nominalBoreMm() + " mm");
    }
    Value uncertainty = table.required("expanded_uncertainty_mm");
    if (uncertainty.number() < 0) {
      throw uncertainty.expected("0 mm or more");
    }
    return new Setting(
        kind,
        size.positive(),
        uncertainty.number(),
        Materials.coefficient(table.required("cte_per_k")),
        maxErrorMm(table, kind));
  }

  private static Double maxErrorMm(Table table, Kind kind) throws FileProblem {
    if (kind == Kind.MICROMETER) {
      return table.required("max_error_mm").positive();
    }
    if (table.has("max_error_mm")) {
      throw table
          .required("max_error_mm")
          .problem("max_error_mm belongs to a micrometer, expected kind = \"micrometer\" with it");
    }
    return null;
  }
}
