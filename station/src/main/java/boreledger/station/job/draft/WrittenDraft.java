package boreledger.station.job.draft;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A draft as the text of a job file, and which field wrote what.
 *
 * @param text the whole file
 */
public record WrittenDraft(String text, List<Line> lines) {
  private static final String FORMAT = "format = \"boreledger-job/1\"";

  /**
   * A line of the file.
   *
   * @param section the table it belongs to
   * @param index which of several tables, from 0
   * @param starts the fields on it by the column where each begins; empty on a table's first line
   */
  record Line(Section section, int index, List<Start> starts) {}

  /** Where a field begins, in columns from 1. */
  record Start(int column, Field field) {}

  /** Takes a copy of the list. */
  public WrittenDraft {
    lines = List.copyOf(lines);
  }

  /** Writes a draft. */
  public static WrittenDraft of(JobDraft draft) {
    Writer writer = new Writer(draft);
    for (Section section : Section.values()) {
      for (int index = 0; index < draft.count(section); index++) {
        if (!section.standsAlone() || isThere(draft, section)) {
          writer.part(section, index);
        }
      }
    }
    return new WrittenDraft(String.join("\n", writer.text) + "\n", writer.lines);
  }

  /**
   * The field that a problem belongs to: the one written at its place, or, at a table's first line,
   * the one whose key its words name first.
   *
   * @param line from 1
   * @param column from 1
   */
  Place placeOf(int line, int column, String words) {
    Line at = lines.get(Math.min(Math.max(line, 1), lines.size()) - 1);
    Field written =
        at.starts().stream()
            .filter(start -> start.column() <= column || start == at.starts().get(0))
            .max(Comparator.comparingInt(Start::column))
            .map(Start::field)
            .orElseGet(() -> namedFirst(at.section(), words));
    return new Place(written, at.index());
  }

  private static boolean isThere(JobDraft draft, Section section) {
    return section.fields().stream().anyMatch(field -> !draft.text(field).isBlank());
  }

  private static Field namedFirst(Section section, String words) {
    Field first = section.first();
    int least = Integer.MAX_VALUE;
    for (Field field : section.fields()) {
      Matcher key = Pattern.compile("\\b" + field.key() + "\\b").matcher(words);
      if (key.find() && key.start() < least) {
        least = key.start();
        first = field;
      }
    }
    return first;
  }

  private static final class Writer {
    private final JobDraft draft;
    private final List<String> text = new ArrayList<>();
    private final List<Line> lines = new ArrayList<>();

    Writer(JobDraft draft) {
      this.draft = draft;
    }

    void part(Section section, int index) {
      if (section == Section.JOB) {
        add(FORMAT, new Line(section, index, List.of()));
      } else {
        add("", new Line(section, index, List.of()));
        add(section.header(), new Line(section, index, List.of()));
      }
      for (Field field : section.fields()) {
        if (field.withSameKey().get(0) == field) {
          key(field, index);
        }
      }
    }

    private void key(Field field, int index) {
      List<Field> fields = field.withSameKey();
      List<Start> starts = new ArrayList<>();
      List<String> items = new ArrayList<>();
      boolean isArray = field.kind().isList() || fields.size() > 1;
      int column = (field.key() + " = ").length() + (isArray ? 2 : 1);
      for (Field each : fields) {
        for (String item : TomlText.items(each.kind(), draft.text(new Place(each, index)))) {
          starts.add(new Start(column, each));
          items.add(item);
          column += item.length() + 2;
        }
      }
      boolean isThere = !items.isEmpty() || !draft.text(new Place(field, index)).isBlank();
      if (isThere) {
        String value = isArray ? TomlText.array(items) : items.get(0);
        List<Start> known = items.isEmpty() ? List.of(new Start(1, field)) : starts;
        add(field.key() + " = " + value, new Line(field.section(), index, known));
      }
    }

    private void add(String words, Line line) {
      text.add(words);
      lines.add(line);
    }
  }
}
