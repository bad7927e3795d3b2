package boreledger.station.bench.jobform;

import boreledger.station.bench.words.Text;
import boreledger.station.job.draft.Section;
import java.util.EnumMap;
import java.util.Map;

/**
 * What a section is called.
 *
 * @param help what it is for; null where that is plain
 * @param part one of several, by number; null when there is only one
 * @param add the button that adds one; null when there is only one
 */
record SectionWords(Text title, Text help, Text part, Text add) {
  private static final Map<Section, SectionWords> ALL = new EnumMap<>(Section.class);

  static {
    once(Section.JOB, Text.JOBFORM_SECTION_JOB, null);
    once(Section.ENGINE, Text.JOBFORM_SECTION_ENGINE, null);
    once(Section.LIMITS, Text.JOBFORM_SECTION_LIMITS, Text.JOBFORM_SECTION_LIMITS_HELP);
    once(Section.PLAN, Text.JOBFORM_SECTION_PLAN, Text.JOBFORM_SECTION_PLAN_HELP);
    once(Section.SETTING, Text.JOBFORM_SECTION_SETTING, Text.JOBFORM_SECTION_SETTING_HELP);
    once(Section.RUNNING, Text.JOBFORM_SECTION_RUNNING, Text.JOBFORM_SECTION_RUNNING_HELP);
    once(
        Section.UNCERTAINTY,
        Text.JOBFORM_SECTION_UNCERTAINTY,
        Text.JOBFORM_SECTION_UNCERTAINTY_HELP);
    ALL.put(
        Section.RING,
        new SectionWords(
            Text.JOBFORM_SECTION_RING,
            Text.JOBFORM_SECTION_RING_HELP,
            Text.JOBFORM_PART_RING,
            Text.JOBFORM_ADD_RING));
    ALL.put(
        Section.PISTON,
        new SectionWords(
            Text.JOBFORM_SECTION_PISTON,
            Text.JOBFORM_SECTION_PISTON_HELP,
            Text.JOBFORM_PART_PISTON,
            Text.JOBFORM_ADD_PISTON));
    ALL.put(
        Section.RING_MARK,
        new SectionWords(
            Text.JOBFORM_SECTION_RING_MARK,
            Text.JOBFORM_SECTION_RING_MARK_HELP,
            Text.JOBFORM_PART_RING_MARK,
            Text.JOBFORM_ADD_RING_MARK));
  }

  static SectionWords of(Section section) {
    return ALL.get(section);
  }

  private static void once(Section section, Text title, Text help) {
    ALL.put(section, new SectionWords(title, help, null, null));
  }
}
