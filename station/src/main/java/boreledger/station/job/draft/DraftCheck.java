package boreledger.station.job.draft;

import boreledger.drivers.file.FileProblem;
import boreledger.station.job.Job;
import boreledger.station.job.JobFiles;
import boreledger.station.table.Tables;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Holds a draft against the reader of job files, and brings what it says back to the fields. */
public final class DraftCheck {
  private static final String FILE = "draft";
  private static final Pattern PLACED = Pattern.compile("(?s)" + FILE + ":(\\d+):(\\d+): (.*)");

  private final JobFiles files;

  /** Checks against the tables in force. */
  public DraftCheck(Tables tables) {
    this.files = new JobFiles(tables);
  }

  /** Everything that can be said about a draft at once. */
  public Findings check(JobDraft draft) {
    Map<Place, Problem> found = new HashMap<>();
    JobDraft read = draft;
    Job job = null;
    // Where a field can be left out without harm, what follows it is read as well.
    for (boolean goesOn = true; goesOn; ) {
      WrittenDraft written = WrittenDraft.of(read);
      try {
        job = files.parse(FILE, written.text());
        goesOn = false;
      } catch (FileProblem problem) {
        Place place = refused(problem, written, found);
        goesOn = place.field().section().standsAlone();
        read = goesOn ? read.with(place, "") : read;
      }
    }
    for (Place place : draft.places()) {
      mistyped(draft, place, found);
    }
    Map<Place, Problem> inOrder = new LinkedHashMap<>();
    draft.places().stream()
        .filter(found::containsKey)
        .forEach(place -> inOrder.put(place, found.get(place)));
    return new Findings(inOrder, inOrder.isEmpty() ? job : null);
  }

  private static Place refused(
      FileProblem problem, WrittenDraft written, Map<Place, Problem> found) {
    Matcher placed = PLACED.matcher(problem.getMessage());
    if (!placed.matches()) {
      throw new IllegalStateException("a problem without its place", problem);
    }
    int line = Integer.parseInt(placed.group(1));
    int column = Integer.parseInt(placed.group(2));
    Place place = written.placeOf(line, column, placed.group(3));
    found.put(place, new Problem.Refused(placed.group(3)));
    return place;
  }

  private static void mistyped(JobDraft draft, Place place, Map<Place, Problem> found) {
    Field field = place.field();
    String text = draft.text(place);
    if (text.isBlank()) {
      if (field.required()) {
        found.put(place, new Problem.Mistyped(Fault.MISSING));
      }
    } else if (field.kind().isNumber()) {
      Typed typed = Numerals.read(field.kind(), text);
      if (!typed.isUnderstood()) {
        found.put(place, new Problem.Mistyped(typed.fault()));
      }
    }
  }
}
