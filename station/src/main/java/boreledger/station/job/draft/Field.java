package boreledger.station.job.draft;

import java.util.List;

/**
 * Every value that a job file may hold, in the order in which it is written. Two fields with one
 * key are the items of one array.
 */
public enum Field {
  NAME(Section.JOB, "name", Kind.TEXT, true),
  DISPLAY_UNIT(Section.JOB, "display_unit", Kind.TEXT, true),

  CYLINDERS(Section.ENGINE, "cylinders", Kind.COUNT, true),
  ARRANGEMENT(Section.ENGINE, "arrangement", Kind.TEXT, true),
  NOMINAL_BORE(Section.ENGINE, "nominal_bore_mm", Kind.LENGTH, true),
  STROKE(Section.ENGINE, "stroke_mm", Kind.LENGTH, true),
  BLOCK_MATERIAL(Section.ENGINE, "block_material", Kind.TEXT, false),
  BLOCK_CTE(Section.ENGINE, "cte_per_k", Kind.COEFFICIENT, false),
  LINER_MATERIAL(Section.ENGINE, "liner_material", Kind.TEXT, false),
  BORE_CTE(Section.ENGINE, "bore_cte_per_k", Kind.COEFFICIENT, false),
  CONDITION(Section.ENGINE, "condition", Kind.TEXT, false),
  MAIN_CAPS(Section.ENGINE, "main_caps", Kind.TEXT, false),

  BORE_MIN(Section.LIMITS, "bore_min_mm", Kind.LENGTH, false),
  BORE_MAX(Section.LIMITS, "bore_max_mm", Kind.LENGTH, false),
  WEAR_LIMIT(Section.LIMITS, "wear_limit_mm", Kind.LENGTH, false),
  TAPER_MAX(Section.LIMITS, "taper_max_mm", Kind.LENGTH, false),
  OUT_OF_ROUND_MAX(Section.LIMITS, "out_of_round_max_mm", Kind.LENGTH, false),
  OVERSIZES(Section.LIMITS, "oversizes_mm", Kind.LENGTHS, false),
  HONING_ALLOWANCE(Section.LIMITS, "honing_allowance_mm", Kind.LENGTH, false),
  CLEARANCE_MIN(Section.LIMITS, "clearance_min_mm", Kind.LENGTH, false),
  CLEARANCE_MAX(Section.LIMITS, "clearance_max_mm", Kind.LENGTH, false),

  DEPTHS(Section.PLAN, "depths_mm", Kind.LENGTHS, true),
  AXES(Section.PLAN, "axes", Kind.WORDS, true),
  CHOKE(Section.PLAN, "choke_mm", Kind.LENGTHS, false),
  CLOCK(Section.PLAN, "clock_deg", Kind.ANGLES, false),

  SETTING_KIND(Section.SETTING, "kind", Kind.TEXT, false),
  SETTING_SIZE(Section.SETTING, "size_mm", Kind.LENGTH, true),
  SETTING_UNCERTAINTY(Section.SETTING, "expanded_uncertainty_mm", Kind.LENGTH, true),
  SETTING_CTE(Section.SETTING, "cte_per_k", Kind.COEFFICIENT, true),
  SETTING_MAX_ERROR(Section.SETTING, "max_error_mm", Kind.LENGTH, false),

  RING_NAME(Section.RING, "name", Kind.TEXT, true),
  RING_MATERIAL(Section.RING, "material", Kind.TEXT, false),
  RING_CTE(Section.RING, "cte_per_k", Kind.COEFFICIENT, false),
  TRAVEL_TOP(Section.RING, "travel_mm", Kind.LENGTH, true),
  TRAVEL_BOTTOM(Section.RING, "travel_mm", Kind.LENGTH, true),
  GAP_MIN(Section.RING, "gap_min_mm", Kind.LENGTH, true),
  GAP_MAX(Section.RING, "gap_max_mm", Kind.LENGTH, true),
  RULE(Section.RING, "rule", Kind.TEXT, false),
  TARGET(Section.RING, "target_mm", Kind.LENGTH, false),
  RING_DEPTHS(Section.RING, "depths_mm", Kind.LENGTHS, true),
  RADIAL_WALL(Section.RING, "radial_wall_mm", Kind.LENGTH, false),

  PISTON_CYLINDER(Section.PISTON, "cylinder", Kind.COUNT, true),
  PISTON_DIAMETER(Section.PISTON, "diameter_mm", Kind.LENGTH, true),

  MARK(Section.RING_MARK, "mark", Kind.TEXT, true),
  MARK_RING(Section.RING_MARK, "ring", Kind.TEXT, true),
  MARK_CYLINDER(Section.RING_MARK, "cylinder", Kind.COUNT, true),

  RING_TEMP(Section.RUNNING, "ring_temp_c", Kind.CELSIUS, false),
  WALL_TOP_TEMP(Section.RUNNING, "wall_top_temp_c", Kind.CELSIUS, false),
  WALL_BOTTOM_TEMP(Section.RUNNING, "wall_bottom_temp_c", Kind.CELSIUS, false),
  HOT_MARGIN(Section.RUNNING, "hot_margin_mm", Kind.LENGTH, false),

  U_TEMPERATURE(Section.UNCERTAINTY, "temperature_k", Kind.KELVIN, false),
  U_CTE(Section.UNCERTAINTY, "cte_per_k", Kind.COEFFICIENT, false),
  U_GAUGE_TEMPERATURE(Section.UNCERTAINTY, "gauge_temperature_k", Kind.KELVIN, false),
  U_GAUGE_CTE(Section.UNCERTAINTY, "gauge_cte_per_k", Kind.COEFFICIENT, false);

  private final Section section;
  private final String key;
  private final Kind kind;
  private final boolean required;

  Field(Section section, String key, Kind kind, boolean required) {
    this.section = section;
    this.key = key;
    this.kind = kind;
    this.required = required;
  }

  /** Where it stands. */
  public Section section() {
    return section;
  }

  /** Its key in the file. */
  public String key() {
    return key;
  }

  /** What can be typed into it. */
  public Kind kind() {
    return kind;
  }

  /** Whether a job without it is refused, whatever else it holds. */
  public boolean required() {
    return required;
  }

  /** The fields that are written under its key; itself alone unless they are items of an array. */
  List<Field> withSameKey() {
    return section.fields().stream().filter(field -> field.key.equals(key)).toList();
  }
}
