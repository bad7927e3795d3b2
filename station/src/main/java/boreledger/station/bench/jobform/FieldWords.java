package boreledger.station.bench.jobform;

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
    put(Field.NAME, Text.JOBFORM_NAME, Text.JOBFORM_NAME_HELP);
    put(Field.DISPLAY_UNIT, Text.JOBFORM_DISPLAY_UNIT, null);
    put(Field.CYLINDERS, Text.JOBFORM_CYLINDERS, null);
    put(Field.ARRANGEMENT, Text.JOBFORM_ARRANGEMENT, null);
    put(Field.NOMINAL_BORE, Text.JOBFORM_NOMINAL_BORE, Text.JOBFORM_NOMINAL_BORE_HELP);
    put(Field.STROKE, Text.JOBFORM_STROKE, null);
    put(Field.BLOCK_MATERIAL, Text.JOBFORM_BLOCK_MATERIAL, null);
    put(Field.BLOCK_CTE, Text.JOBFORM_BLOCK_CTE, Text.JOBFORM_BLOCK_CTE_HELP);
    put(Field.LINER_MATERIAL, Text.JOBFORM_LINER_MATERIAL, Text.JOBFORM_LINER_MATERIAL_HELP);
    put(Field.BORE_CTE, Text.JOBFORM_BORE_CTE, Text.JOBFORM_BORE_CTE_HELP);
    put(Field.CONDITION, Text.JOBFORM_CONDITION, Text.JOBFORM_CONDITION_HELP);
    put(Field.MAIN_CAPS, Text.JOBFORM_MAIN_CAPS, null);
    put(Field.BORE_MIN, Text.JOBFORM_BORE_MIN, null);
    put(Field.BORE_MAX, Text.JOBFORM_BORE_MAX, Text.JOBFORM_BORE_MAX_HELP);
    put(Field.WEAR_LIMIT, Text.JOBFORM_WEAR_LIMIT, Text.JOBFORM_WEAR_LIMIT_HELP);
    put(Field.TAPER_MAX, Text.JOBFORM_TAPER_MAX, Text.JOBFORM_TAPER_MAX_HELP);
    put(Field.OUT_OF_ROUND_MAX, Text.JOBFORM_OUT_OF_ROUND_MAX, Text.JOBFORM_OUT_OF_ROUND_MAX_HELP);
    put(Field.OVERSIZES, Text.JOBFORM_OVERSIZES, Text.JOBFORM_OVERSIZES_HELP);
    put(Field.HONING_ALLOWANCE, Text.JOBFORM_HONING_ALLOWANCE, Text.JOBFORM_HONING_ALLOWANCE_HELP);
    put(Field.CLEARANCE_MIN, Text.JOBFORM_CLEARANCE_MIN, Text.JOBFORM_CLEARANCE_MIN_HELP);
    put(Field.CLEARANCE_MAX, Text.JOBFORM_CLEARANCE_MAX, Text.JOBFORM_CLEARANCE_MAX_HELP);
    put(Field.DEPTHS, Text.JOBFORM_DEPTHS, Text.JOBFORM_DEPTHS_HELP);
    put(Field.AXES, Text.JOBFORM_AXES, Text.JOBFORM_AXES_HELP);
    put(Field.CHOKE, Text.JOBFORM_CHOKE, Text.JOBFORM_CHOKE_HELP);
    put(Field.CLOCK, Text.JOBFORM_CLOCK, Text.JOBFORM_CLOCK_HELP);
    put(Field.SETTING_KIND, Text.JOBFORM_SETTING_KIND, null);
    put(Field.SETTING_SIZE, Text.JOBFORM_SETTING_SIZE, Text.JOBFORM_SETTING_SIZE_HELP);
    put(
        Field.SETTING_UNCERTAINTY,
        Text.JOBFORM_SETTING_UNCERTAINTY,
        Text.JOBFORM_SETTING_UNCERTAINTY_HELP);
    put(Field.SETTING_CTE, Text.JOBFORM_SETTING_CTE, Text.JOBFORM_SETTING_CTE_HELP);
    put(
        Field.SETTING_MAX_ERROR,
        Text.JOBFORM_SETTING_MAX_ERROR,
        Text.JOBFORM_SETTING_MAX_ERROR_HELP);
    put(Field.RING_NAME, Text.JOBFORM_RING_NAME, Text.JOBFORM_RING_NAME_HELP);
    put(Field.RING_MATERIAL, Text.JOBFORM_RING_MATERIAL, null);
    put(Field.RING_CTE, Text.JOBFORM_RING_CTE, Text.JOBFORM_RING_CTE_HELP);
    put(Field.TRAVEL_TOP, Text.JOBFORM_TRAVEL_TOP, Text.JOBFORM_TRAVEL_TOP_HELP);
    put(Field.TRAVEL_BOTTOM, Text.JOBFORM_TRAVEL_BOTTOM, Text.JOBFORM_TRAVEL_BOTTOM_HELP);
    put(Field.GAP_MIN, Text.JOBFORM_GAP_MIN, Text.JOBFORM_GAP_MIN_HELP);
    put(Field.GAP_MAX, Text.JOBFORM_GAP_MAX, Text.JOBFORM_GAP_MAX_HELP);
    put(Field.RULE, Text.JOBFORM_RULE, null);
    put(Field.TARGET, Text.JOBFORM_TARGET, Text.JOBFORM_TARGET_HELP);
    put(Field.RING_DEPTHS, Text.JOBFORM_RING_DEPTHS, Text.JOBFORM_RING_DEPTHS_HELP);
    put(Field.RADIAL_WALL, Text.JOBFORM_RADIAL_WALL, Text.JOBFORM_RADIAL_WALL_HELP);
    put(Field.PISTON_CYLINDER, Text.JOBFORM_PISTON_CYLINDER, null);
    put(Field.PISTON_DIAMETER, Text.JOBFORM_PISTON_DIAMETER, Text.JOBFORM_PISTON_DIAMETER_HELP);
    put(Field.MARK, Text.JOBFORM_MARK, Text.JOBFORM_MARK_HELP);
    put(Field.MARK_RING, Text.JOBFORM_MARK_RING, Text.JOBFORM_MARK_RING_HELP);
    put(Field.MARK_CYLINDER, Text.JOBFORM_MARK_CYLINDER, null);
    put(Field.RING_TEMP, Text.JOBFORM_RING_TEMP, null);
    put(Field.WALL_TOP_TEMP, Text.JOBFORM_WALL_TOP_TEMP, null);
    put(Field.WALL_BOTTOM_TEMP, Text.JOBFORM_WALL_BOTTOM_TEMP, null);
    put(Field.HOT_MARGIN, Text.JOBFORM_HOT_MARGIN, Text.JOBFORM_HOT_MARGIN_HELP);
    put(Field.U_TEMPERATURE, Text.JOBFORM_U_TEMPERATURE, Text.JOBFORM_U_TEMPERATURE_HELP);
    put(Field.U_CTE, Text.JOBFORM_U_CTE, Text.JOBFORM_U_CTE_HELP);
    put(
        Field.U_GAUGE_TEMPERATURE,
        Text.JOBFORM_U_GAUGE_TEMPERATURE,
        Text.JOBFORM_U_GAUGE_TEMPERATURE_HELP);
    put(Field.U_GAUGE_CTE, Text.JOBFORM_U_GAUGE_CTE, Text.JOBFORM_U_GAUGE_CTE_HELP);
  }

  static FieldWords of(Field field) {
    return ALL.get(field);
  }

  private static void put(Field field, Text label, Text help) {
    ALL.put(field, new FieldWords(label, help));
  }
}
