package boreledger.station.job;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.Table;
import boreledger.drivers.file.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads {@code [limits]}. */
final class LimitsSection {
  private LimitsSection() {}

  static Limits limits(Optional<Value> section, Engine engine) throws FileProblem {
    if (section.isEmpty()) {
      return new Limits(null, null, null, null, null, List.of(), null, null, null);
    }
    Table table = section.get().table();
    Limits limits =
        new Limits(
            nearBore(table, "bore_min_mm", engine),
            nearBore(table, "bore_max_mm", engine),
            nearBore(table, "wear_limit_mm", engine),
            belowBore(table, "taper_max_mm", engine),
            belowBore(table, "out_of_round_max_mm", engine),
            oversizes(table, engine),
            belowBore(table, "honing_allowance_mm", engine),
            belowBore(table, "clearance_min_mm", engine),
            belowBore(table, "clearance_max_mm", engine));
    inOrder(table, "bore_min_mm", limits.boreMinMm(), "bore_max_mm", limits.boreMaxMm());
    inOrder(table, "bore_max_mm", limits.boreMaxMm(), "wear_limit_mm", limits.wearLimitMm());
    inOrder(table, "bore_min_mm", limits.boreMinMm(), "wear_limit_mm", limits.wearLimitMm());
    inOrder(
        table,
        "clearance_min_mm",
        limits.clearanceMinMm(),
        "clearance_max_mm",
        limits.clearanceMaxMm());
    return limits;
  }

  private static Double nearBore(Table table, String key, Engine engine) throws FileProblem {
    if (!table.has(key)) {
      return null;
    }
    Value value = table.required(key);
    double mm = value.positive();
    if (Math.abs(mm - engine.nominalBoreMm()) > engine.nominalBoreMm() / 10) {
      throw value.expected("a size near the bore of " + engine.nominalBoreMm() + " mm");
    }
    return mm;
  }

  private static Double belowBore(Table table, String key, Engine engine) throws FileProblem {
    if (!table.has(key)) {
      return null;
    }
    Value value = table.required(key);
    double mm = value.number();
    if (mm < 0 || mm >= engine.nominalBoreMm()) {
      throw value.expected("0 mm to below the bore of " + engine.nominalBoreMm() + " mm");
    }
    return mm;
  }

  private static List<Double> oversizes(Table table, Engine engine) throws FileProblem {
    List<Double> oversizesMm = new ArrayList<>();
    if (table.has("oversizes_mm")) {
      for (Value value : table.required("oversizes_mm").list()) {
        double mm = value.positive();
        if (mm >= engine.nominalBoreMm() / 10) {
          throw value.expected("an oversize below a tenth of the bore");
        }
        oversizesMm.add(mm);
      }
    }
    return oversizesMm.stream().sorted().distinct().toList();
  }

  private static void inOrder(
      Table table, String lowerKey, Double lowerMm, String upperKey, Double upperMm)
      throws FileProblem {
    if (lowerMm != null && upperMm != null && lowerMm > upperMm) {
      throw table.required(upperKey).expected("at least the " + lowerMm + " mm of " + lowerKey);
    }
  }
}
