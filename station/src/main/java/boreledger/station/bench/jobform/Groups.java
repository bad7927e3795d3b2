package boreledger.station.bench.jobform;

import static boreledger.station.job.draft.Field.BORE_CTE;
import static boreledger.station.job.draft.Field.CHOKE;
import static boreledger.station.job.draft.Field.CLEARANCE_MAX;
import static boreledger.station.job.draft.Field.CLEARANCE_MIN;
import static boreledger.station.job.draft.Field.CLOCK;
import static boreledger.station.job.draft.Field.CONDITION;
import static boreledger.station.job.draft.Field.LINER_MATERIAL;
import static boreledger.station.job.draft.Field.MAIN_CAPS;
import static boreledger.station.job.draft.Field.RADIAL_WALL;

import boreledger.station.job.draft.Field;
import boreledger.station.job.draft.Section;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The order of the sections on the form, and which fields are folded away at first. */
final class Groups {
  /** Rings and what else the job turns on come first, what few jobs need comes last. */
  static final List<Section> ORDER =
      List.of(
          Section.JOB,
          Section.ENGINE,
          Section.LIMITS,
          Section.PLAN,
          Section.SETTING,
          Section.RING,
          Section.PISTON,
          Section.RUNNING,
          Section.RING_MARK,
          Section.UNCERTAINTY);

  private static final Set<Field> FOLDED =
      EnumSet.of(
          LINER_MATERIAL,
          BORE_CTE,
          CONDITION,
          MAIN_CAPS,
          CLEARANCE_MIN,
          CLEARANCE_MAX,
          CHOKE,
          CLOCK,
          RADIAL_WALL);

  /** So that what belongs together stands side by side. */
  private static final Set<Field> BEGIN_A_ROW =
      EnumSet.of(Field.TAPER_MAX, Field.SETTING_SIZE, Field.RING_MATERIAL);

  private Groups() {}

  static boolean beginsRow(Field field) {
    return BEGIN_A_ROW.contains(field);
  }

  static List<Field> shown(Section section) {
    return section.fields().stream().filter(field -> !isFolded(field)).toList();
  }

  static List<Field> folded(Section section) {
    return section.fields().stream().filter(Groups::isFolded).toList();
  }

  private static boolean isFolded(Field field) {
    return FOLDED.contains(field)
        || field.section() == Section.RUNNING
        || field.section() == Section.UNCERTAINTY;
  }
}
