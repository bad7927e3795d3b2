package boreledger.station.bench.jobform;

import boreledger.station.bench.words.JobFormText;
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
    once(Section.JOB, JobFormText.SECTION_JOB, null);
    once(Section.ENGINE, JobFormText.SECTION_ENGINE, null);
    once(Section.LIMITS, JobFormText.SECTION_LIMITS, JobFormText.SECTION_LIMITS_HELP);
    once(Section.PLAN, JobFormText.SECTION_PLAN, JobFormText.SECTION_PLAN_HELP);
    once(Section.SETTING, JobFormText.SECTION_SETTING, JobFormText.SECTION_SETTING_HELP);
    once(Section.RUNNING, JobFormText.SECTION_RUNNING, JobFormText.SECTION_RUNNING_HELP);
    once(
        Section.UNCERTAINTY, JobFormText.SECTION_UNCERTAINTY, JobFormText.SECTION_UNCERTAINTY_HELP);
    ALL.put(
        Section.RING,
        new SectionWords(
            JobFormText.SECTION_RING,
            JobFormText.SECTION_RING_HELP,
            JobFormText.PART_RING,
            JobFormText.ADD_RING));
    ALL.put(
        Section.PISTON,
        new SectionWords(
            JobFormText.SECTION_PISTON,
            JobFormText.SECTION_PISTON_HELP,
            JobFormText.PART_PISTON,
            JobFormText.ADD_PISTON));
    ALL.put(
        Section.RING_MARK,
        new SectionWords(
            JobFormText.SECTION_RING_MARK,
            JobFormText.SECTION_RING_MARK_HELP,
            JobFormText.PART_RING_MARK,
            JobFormText.ADD_RING_MARK));
  }

  static SectionWords of(Section section) {
    return ALL.get(section);
  }

  private static void once(Section section, Text title, Text help) {
    ALL.put(section, new SectionWords(title, help, null, null));
  }
}
