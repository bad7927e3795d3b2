package boreledger.station.table;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.StrictToml;
import boreledger.drivers.file.Table;
import java.util.Map;

/**
 * Temperatures of a running engine where a job gives none, in degrees Celsius.
 *
 * @param origin where they come from
 */
public record UsualTemperatures(
    double ringTempC, double wallTopTempC, double wallBottomTempC, String origin) {
  static final String FILE = "running-temperatures.toml";

  static UsualTemperatures parse(TableFile file) throws FileProblem {
    Table top = StrictToml.parse(file.shown(), file.text());
    top.required("format").oneOf(Map.of("boreledger-running-temperatures/1", true));
    UsualTemperatures usual =
        new UsualTemperatures(
            top.required("ring_temp_c").number(),
            top.required("wall_top_temp_c").number(),
            top.required("wall_bottom_temp_c").number(),
            top.required("origin").string());
    top.done();
    return usual;
  }
}
