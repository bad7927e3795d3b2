package boreledger.station.bench.jobform;

import boreledger.station.bench.words.JobFormText;
import boreledger.station.bench.words.Text;
import boreledger.station.job.draft.Field;
import java.util.EnumMap;
import java.util.Map;

/**
 * What a field is called and what helps with it.
 *
 * @param help one sentence where a mistake is likely; null where none is
 */
record FieldWords(Text label, Text help) {
  private static final Map<Field, FieldWords> ALL = new EnumMap<>(Field.class);

  static {
    put(Field.NAME, JobFormText.NAME, JobFormText.NAME_HELP);
    put(Field.DISPLAY_UNIT, JobFormText.DISPLAY_UNIT, null);
    put(Field.CYLINDERS, JobFormText.CYLINDERS, null);
    put(Field.ARRANGEMENT, JobFormText.ARRANGEMENT, null);
    put(Field.NOMINAL_BORE, JobFormText.NOMINAL_BORE, JobFormText.NOMINAL_BORE_HELP);
    put(Field.STROKE, JobFormText.STROKE, null);
    put(Field.BLOCK_MATERIAL, JobFormText.BLOCK_MATERIAL, null);
    put(Field.BLOCK_CTE, JobFormText.BLOCK_CTE, JobFormText.BLOCK_CTE_HELP);
    put(Field.LINER_MATERIAL, JobFormText.LINER_MATERIAL, JobFormText.LINER_MATERIAL_HELP);
    put(Field.BORE_CTE, JobFormText.BORE_CTE, JobFormText.BORE_CTE_HELP);
    put(Field.CONDITION, JobFormText.CONDITION, JobFormText.CONDITION_HELP);
    put(Field.MAIN_CAPS, JobFormText.MAIN_CAPS, null);
    put(Field.BORE_MIN, JobFormText.BORE_MIN, null);
    put(Field.BORE_MAX, JobFormText.BORE_MAX, JobFormText.BORE_MAX_HELP);
    put(Field.WEAR_LIMIT, JobFormText.WEAR_LIMIT, JobFormText.WEAR_LIMIT_HELP);
    put(Field.TAPER_MAX, JobFormText.TAPER_MAX, JobFormText.TAPER_MAX_HELP);
    put(Field.OUT_OF_ROUND_MAX, JobFormText.OUT_OF_ROUND_MAX, JobFormText.OUT_OF_ROUND_MAX_HELP);
    put(Field.OVERSIZES, JobFormText.OVERSIZES, JobFormText.OVERSIZES_HELP);
    put(Field.HONING_ALLOWANCE, JobFormText.HONING_ALLOWANCE, JobFormText.HONING_ALLOWANCE_HELP);
    put(Field.CLEARANCE_MIN, JobFormText.CLEARANCE_MIN, JobFormText.CLEARANCE_MIN_HELP);
    put(Field.CLEARANCE_MAX, JobFormText.CLEARANCE_MAX, JobFormText.CLEARANCE_MAX_HELP);
    put(Field.DEPTHS, JobFormText.DEPTHS, JobFormText.DEPTHS_HELP);
    put(Field.AXES, JobFormText.AXES, JobFormText.AXES_HELP);
    put(Field.CHOKE, JobFormText.CHOKE, JobFormText.CHOKE_HELP);
    put(Field.CLOCK, JobFormText.CLOCK, JobFormText.CLOCK_HELP);
    put(Field.SETTING_KIND, JobFormText.SETTING_KIND, null);
    put(Field.SETTING_SIZE, JobFormText.SETTING_SIZE, JobFormText.SETTING_SIZE_HELP);
    put(
        Field.SETTING_UNCERTAINTY,
        JobFormText.SETTING_UNCERTAINTY,
        JobFormText.SETTING_UNCERTAINTY_HELP);
    put(Field.SETTING_CTE, JobFormText.SETTING_CTE, JobFormText.SETTING_CTE_HELP);
    put(Field.SETTING_MAX_ERROR, JobFormText.SETTING_MAX_ERROR, JobFormText.SETTING_MAX_ERROR_HELP);
    put(Field.RING_NAME, JobFormText.RING_NAME, JobFormText.RING_NAME_HELP);
    put(Field.RING_MATERIAL, JobFormText.RING_MATERIAL, null);
    put(Field.RING_CTE, JobFormText.RING_CTE, JobFormText.RING_CTE_HELP);
    put(Field.TRAVEL_TOP, JobFormText.TRAVEL_TOP, JobFormText.TRAVEL_TOP_HELP);
    put(Field.TRAVEL_BOTTOM, JobFormText.TRAVEL_BOTTOM, JobFormText.TRAVEL_BOTTOM_HELP);
    put(Field.GAP_MIN, JobFormText.GAP_MIN, JobFormText.GAP_MIN_HELP);
    put(Field.GAP_MAX, JobFormText.GAP_MAX, JobFormText.GAP_MAX_HELP);
    put(Field.RULE, JobFormText.RULE, null);
    put(Field.TARGET, JobFormText.TARGET, JobFormText.TARGET_HELP);
    put(Field.RING_DEPTHS, JobFormText.RING_DEPTHS, JobFormText.RING_DEPTHS_HELP);
    put(Field.RADIAL_WALL, JobFormText.RADIAL_WALL, JobFormText.RADIAL_WALL_HELP);
    put(Field.PISTON_CYLINDER, JobFormText.PISTON_CYLINDER, null);
    put(Field.PISTON_DIAMETER, JobFormText.PISTON_DIAMETER, JobFormText.PISTON_DIAMETER_HELP);
    put(Field.MARK, JobFormText.MARK, JobFormText.MARK_HELP);
    put(Field.MARK_RING, JobFormText.MARK_RING, JobFormText.MARK_RING_HELP);
    put(Field.MARK_CYLINDER, JobFormText.MARK_CYLINDER, null);
    put(Field.RING_TEMP, JobFormText.RING_TEMP, null);
    put(Field.WALL_TOP_TEMP, JobFormText.WALL_TOP_TEMP, null);
    put(Field.WALL_BOTTOM_TEMP, JobFormText.WALL_BOTTOM_TEMP, null);
    put(Field.HOT_MARGIN, JobFormText.HOT_MARGIN, JobFormText.HOT_MARGIN_HELP);
    put(Field.U_TEMPERATURE, JobFormText.U_TEMPERATURE, JobFormText.U_TEMPERATURE_HELP);
    put(Field.U_CTE, JobFormText.U_CTE, JobFormText.U_CTE_HELP);
    put(
        Field.U_GAUGE_TEMPERATURE,
        JobFormText.U_GAUGE_TEMPERATURE,
        JobFormText.U_GAUGE_TEMPERATURE_HELP);
    put(Field.U_GAUGE_CTE, JobFormText.U_GAUGE_CTE, JobFormText.U_GAUGE_CTE_HELP);
  }

  static FieldWords of(Field field) {
    return ALL.get(field);
  }

  private static void put(Field field, Text label, Text help) {
    ALL.put(field, new FieldWords(label, help));
  }
}
