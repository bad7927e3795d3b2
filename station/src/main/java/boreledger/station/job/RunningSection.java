package boreledger.station.job;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.Table;
import boreledger.drivers.file.Value;
import java.util.Optional;

/** Reads {@code [running]} and {@code [uncertainty]}. */
final class RunningSection {
  private RunningSection() {}

  static Running running(Optional<Value> section) throws FileProblem {
    if (section.isEmpty()) {
      return new Running(null, null, null, null);
    }
    Table table = section.get().table();
    return new Running(
        temperature(table, "ring_temp_c"),
        temperature(table, "wall_top_temp_c"),
        temperature(table, "wall_bottom_temp_c"),
        notNegative(table, "hot_margin_mm", null));
  }

  static InputUncertainty uncertainty(Optional<Value> section) throws FileProblem {
    InputUncertainty usual = InputUncertainty.DEFAULT;
    if (section.isEmpty()) {
      return usual;
    }
    Table table = section.get().table();
    return new InputUncertainty(
        notNegative(table, "temperature_k", usual.temperatureK()),
        notNegative(table, "cte_per_k", usual.ctePerK()),
        notNegative(table, "gauge_temperature_k", usual.gaugeTemperatureK()),
        notNegative(table, "gauge_cte_per_k", usual.gaugeCtePerK()));
  }

  private static Double temperature(Table table, String key) throws FileProblem {
    if (!table.has(key)) {
      return null;
    }
    Value value = table.required(key);
    double tempC = value.number();
    if (!Running.isPossible(tempC)) {
      throw value.expected(
          "degrees Celsius from " + Running.COLDEST_C + " to " + Running.HOTTEST_C);
    }
    return tempC;
  }

  private static Double notNegative(Table table, String key, Double otherwise) throws FileProblem {
    if (!table.has(key)) {
      return otherwise;
    }
    Value value = table.required(key);
    if (value.number() < 0) {
      throw value.expected("0 or more");
    }
    return value.number();
  }
}
