package boreledger.station.bench.jobform;

import boreledger.station.job.DisplayUnit;
import boreledger.station.job.draft.DraftCheck;
import boreledger.station.job.draft.Field;
import boreledger.station.job.draft.Findings;
import boreledger.station.job.draft.JobDraft;
import boreledger.station.job.draft.Place;
import boreledger.station.job.draft.Problem;
import boreledger.station.job.draft.Section;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A form being filled in. A problem is shown once its field was left, or when a person wants to
 * save; before that nobody is told that what they have not come to yet is missing.
 */
final class FormModel {
  private final DraftCheck check;
  private final Set<Place> left = new HashSet<>();
  private JobDraft saved;
  private JobDraft draft;
  private Findings findings;
  private DisplayUnit wanted;
  private boolean isAllShown;
  private Runnable changed = () -> {};

  /** Begins with a draft; what stands in it already counts as filled in. */
  FormModel(DraftCheck check, JobDraft draft) {
    this.check = check;
    this.saved = draft;
    this.draft = draft;
    leaveFilled();
    findings = check.check(draft);
  }

  /** A new job; what nearly every job has is there. */
  static JobDraft fresh(DisplayUnit unit) {
    return JobDraft.empty()
        .with(Field.DISPLAY_UNIT, unit.symbol())
        .with(Field.AXES, "thrust, pin")
        .with(Field.SETTING_KIND, "ring");
  }

  /** A job that was read; what its file leaves to a default stands there in words. */
  static JobDraft filled(JobDraft read) {
    return read.text(Field.SETTING_KIND).isEmpty() ? read.with(Field.SETTING_KIND, "ring") : read;
  }

  /** Called after each change, the number of rings, pistons and marks included. */
  void onChange(Runnable action) {
    changed = action;
  }

  JobDraft draft() {
    return draft;
  }

  Findings findings() {
    return findings;
  }

  /** The unit that lengths are shown and typed in. */
  DisplayUnit unit() {
    if (wanted != null) {
      return wanted;
    }
    return draft.text(Field.DISPLAY_UNIT).equals("in") ? DisplayUnit.IN : DisplayUnit.MM;
  }

  /** Shows lengths in a unit; null for the one that the job names. */
  void showIn(DisplayUnit unit) {
    wanted = unit;
    changed.run();
  }

  Rendering rendering(Field field) {
    return new Rendering(field.kind(), unit());
  }

  void type(Place place, String draftText) {
    become(draft.with(place, draftText));
  }

  /** A person went on from a field. */
  void leave(Place place) {
    if (left.add(place)) {
      changed.run();
    }
  }

  void add(Section section) {
    become(draft.adding(section));
  }

  void duplicate(Section section, int index) {
    restructured(section, draft.duplicating(section, index));
  }

  void remove(Section section, int index) {
    restructured(section, draft.removing(section, index));
  }

  /** From now on every problem is shown. */
  void showAll() {
    isAllShown = true;
    changed.run();
  }

  /** What stands there now stands in the file. */
  void becameSaved() {
    saved = draft;
    changed.run();
  }

  boolean isChanged() {
    return !draft.equals(saved);
  }

  /** What is wrong with a field, if it is to be shown already. */
  Optional<Problem> problem(Place place) {
    boolean isDue = isAllShown || left.contains(place);
    return isDue ? Optional.ofNullable(findings.problems().get(place)) : Optional.empty();
  }

  /** The fields whose problems are shown, in the order of the form. */
  List<Place> problems() {
    return inFormOrder().stream().filter(place -> problem(place).isPresent()).toList();
  }

  /** The fields of which it is too early to say that something is wrong with them. */
  List<Place> open() {
    return inFormOrder().stream().filter(place -> problem(place).isEmpty()).toList();
  }

  /** Whether a field is to be there: some are asked for only where another one calls for them. */
  boolean isAsked(Place place) {
    if (!draft.text(place).isBlank() || problem(place).isPresent()) {
      return true;
    }
    return switch (place.field()) {
      case SETTING_MAX_ERROR -> draft.text(Field.SETTING_KIND).equals("micrometer");
      case TARGET -> draft.text(new Place(Field.RULE, place.index())).isBlank();
      default -> true;
    };
  }

  private List<Place> inFormOrder() {
    return findings.problems().keySet().stream()
        .sorted(Comparator.comparingInt(place -> Groups.ORDER.indexOf(place.field().section())))
        .toList();
  }

  private void restructured(Section section, JobDraft next) {
    left.removeIf(place -> place.field().section() == section);
    draft = next;
    leaveFilled();
    become(next);
  }

  private void leaveFilled() {
    draft.places().stream().filter(place -> !draft.text(place).isBlank()).forEach(left::add);
  }

  private void become(JobDraft next) {
    draft = next;
    findings = check.check(next);
    changed.run();
  }
}
